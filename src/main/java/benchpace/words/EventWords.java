package benchpace.words;

import benchpace.live.ClassEvent;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;

/** Says in a few plain words what an event was, for the undo button and a seat's history. */
public final class EventWords implements ClassEvent.Cases<String> {
    private final Plan plan;

    private EventWords(Plan plan) {
        this.plan = plan;
    }

    /** "seat 4 done with Wicks". @param plan the class's, for the names of steps, activities and candles */
    public static String of(Plan plan, ClassEvent event) {
        return event.match(new EventWords(plan));
    }

    private String step(StepId id) {
        return plan.step(id).map(s -> s.name()).orElse(id.value());
    }

    private String activity(ActivityId id) {
        return plan.activity(id).map(a -> a.name()).orElse(id.value());
    }

    private static String seat(SeatNumber seat) {
        return "seat " + seat;
    }

    @Override public String classCreated(ClassEvent.ClassCreated event) {
        return "class set up";
    }

    @Override public String classSetUpAgain(ClassEvent.ClassSetUpAgain event) {
        return "class set up anew";
    }

    @Override public String seatAdded(ClassEvent.SeatAdded event) {
        return seat(event.seat()) + " added";
    }

    @Override public String seatTakenAway(ClassEvent.SeatTakenAway event) {
        return seat(event.seat()) + " taken away";
    }

    @Override public String guestCorrected(ClassEvent.GuestCorrected event) {
        return seat(event.seat()) + " written down anew";
    }

    @Override public String stepOpened(ClassEvent.StepOpened event) {
        return "opened " + step(event.step());
    }

    @Override public String stepFinished(ClassEvent.StepFinished event) {
        return seat(event.seat()) + " done with " + step(event.step());
    }

    @Override public String undone(ClassEvent.Undone event) {
        return "took a tap back";
    }

    @Override public String tapRetimed(ClassEvent.TapRetimed event) {
        return "corrected the time of a tap";
    }

    @Override public String tapReseated(ClassEvent.TapReseated event) {
        return "moved a tap to " + seat(event.to());
    }

    @Override public String seatPaused(ClassEvent.SeatPaused event) {
        return seat(event.seat()) + " paused";
    }

    @Override public String seatResumed(ClassEvent.SeatResumed event) {
        return seat(event.seat()) + " back at the table";
    }

    @Override public String seatExpected(ClassEvent.SeatExpected event) {
        return seat(event.seat()) + " not here yet";
    }

    @Override public String seatArrived(ClassEvent.SeatArrived event) {
        return seat(event.seat()) + " arrived";
    }

    @Override public String seatLeft(ClassEvent.SeatLeft event) {
        return seat(event.seat()) + " left";
    }

    @Override public String seatPaired(ClassEvent.SeatPaired event) {
        return seat(event.with()) + " shares the candle of " + seat(event.seat());
    }

    @Override public String seatUnpaired(ClassEvent.SeatUnpaired event) {
        return seat(event.seat()) + " makes a candle of its own";
    }

    @Override public String pouredAgain(ClassEvent.PouredAgain event) {
        return seat(event.seat()) + " poured again";
    }

    @Override public String seatNoted(ClassEvent.SeatNoted event) {
        return "note on " + seat(event.seat());
    }

    @Override public String classNoted(ClassEvent.ClassNoted event) {
        return "note";
    }

    @Override public String candleChosen(ClassEvent.CandleChosen event) {
        return seat(event.seat()) + " makes " + plan.candle(event.candle()).map(c -> c.name()).orElse(event.candle());
    }

    @Override public String roomRead(ClassEvent.RoomRead event) {
        return "room read, " + Degrees.celsius(event.celsius());
    }

    @Override public String pourRead(ClassEvent.PourRead event) {
        return "pour read, " + Degrees.celsius(event.celsius());
    }

    @Override public String temperatureRead(ClassEvent.TemperatureRead event) {
        return Degrees.celsius(event.celsius()) + " read at " + seat(event.seat());
    }

    @Override public String skinSeen(ClassEvent.SkinSeen event) {
        return "skin formed at " + seat(event.seat());
    }

    @Override public String judgedSet(ClassEvent.JudgedSet event) {
        return seat(event.seat()) + " judged set";
    }

    @Override public String helpClaimed(ClassEvent.HelpClaimed event) {
        return event.helper() + " goes to " + seat(event.seat());
    }

    @Override public String helpSorted(ClassEvent.HelpSorted event) {
        return event.helper() + " sorted " + seat(event.seat());
    }

    @Override public String stillWorking(ClassEvent.StillWorking event) {
        return seat(event.seat()) + " still at " + step(event.step());
    }

    @Override public String doneHinted(ClassEvent.DoneHinted event) {
        return seat(event.seat()) + " says " + step(event.step()) + " is done";
    }

    @Override public String guestsMayTell(ClassEvent.GuestsMayTell event) {
        return event.on() ? "let guests say done" : "guests no longer say done";
    }

    @Override public String activityOpened(ClassEvent.ActivityOpened event) {
        return "opened " + activity(event.activity());
    }

    @Override public String activityClosed(ClassEvent.ActivityClosed event) {
        return "closed " + activity(event.activity());
    }

    @Override public String activityExtended(ClassEvent.ActivityExtended event) {
        return activity(event.activity()) + " " + event.minutes() + " min longer";
    }

    @Override public String activityMoved(ClassEvent.ActivityMoved event) {
        return "moved " + activity(event.activity());
    }

    @Override public String activitySkipped(ClassEvent.ActivitySkipped event) {
        return "left out " + activity(event.activity());
    }

    @Override public String activityJoined(ClassEvent.ActivityJoined event) {
        return seat(event.seat()) + " joined " + activity(event.activity());
    }

    @Override public String activityQuit(ClassEvent.ActivityQuit event) {
        return seat(event.seat()) + " left " + activity(event.activity());
    }

    @Override public String clockShifted(ClassEvent.ClockShifted event) {
        return "clock set right";
    }

    @Override public String classClosed(ClassEvent.ClassClosed event) {
        return "closed the class";
    }
}
