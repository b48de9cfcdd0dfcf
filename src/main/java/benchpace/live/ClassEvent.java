package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Something that happened in a class. A {@link Command} carries the event it wishes for; the rules let it stand or
 * refuse it. When it happened, and who said so, is in {@link Recorded}.
 *
 * <p>What an event means is a promise to old files: none is ever renamed or removed.
 */
public sealed interface ClassEvent {
    <R> R match(Cases<R> cases);

    /** Events about one seat. */
    sealed interface AtSeat extends ClassEvent {
        SeatNumber seat();
    }

    /** The class was set up. */
    record ClassCreated(Setup setup) implements ClassEvent {
        /** With nothing said beyond the plan. @param seats every place at the table, at least one, each once */
        public ClassCreated(Plan plan, String name, Instant startsAt, List<Place> seats) {
            this(new Setup(plan, name, startsAt, seats));
        }

        @Override public <R> R match(Cases<R> cases) {
            return cases.classCreated(this);
        }
    }

    /** It is set up in another way; it had not begun. */
    record ClassSetUpAgain(Setup setup) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.classSetUpAgain(this);
        }
    }

    /**
     * A place at the table and who is to sit there.
     *
     * @param name   the first name the guest wants shown; empty if none
     * @param party  with whom the guest came, in a word of the organiser's; empty if alone
     * @param candle the plan's candle that the guest makes; the first if none is chosen
     * @param note   what to mind, such as an allergy: for those who look after the table; may be empty
     */
    record Place(SeatNumber seat, String name, String party, Optional<String> candle, String note) {
        /** Of whom no more is known. */
        public Place(SeatNumber seat, String name) {
            this(seat, name, "", Optional.empty(), "");
        }
    }

    /** One place more at the table. */
    record SeatAdded(Place place) implements AtSeat {
        @Override public SeatNumber seat() {
            return place.seat();
        }

        @Override public <R> R match(Cases<R> cases) {
            return cases.seatAdded(this);
        }
    }

    /** The place is nobody's tonight: it is not set, and no screen shows it. */
    record SeatTakenAway(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatTakenAway(this);
        }
    }

    /** Who sits there was written down wrongly. It says nothing of whether they are here. */
    record GuestCorrected(SeatNumber seat, String name, String party, String note) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.guestCorrected(this);
        }
    }

    /** The instructor opened a led step for everyone. */
    record StepOpened(StepId step) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.stepOpened(this);
        }
    }

    /** Somebody tapped that this seat is done with this step. */
    record StepFinished(SeatNumber seat, StepId step) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.stepFinished(this);
        }
    }

    /** The event of that number shall count as if it had never been. */
    record Undone(long seq) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.undone(this);
        }
    }

    /** An earlier tap was made at another time than it says. */
    record TapRetimed(long seq, Instant to) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.tapRetimed(this);
        }
    }

    /** An earlier tap was meant for another seat. */
    record TapReseated(long seq, SeatNumber to) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.tapReseated(this);
        }
    }

    /** The seat left the table for a moment; it is not judged meanwhile. */
    record SeatPaused(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatPaused(this);
        }
    }

    record SeatResumed(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatResumed(this);
        }
    }

    /** The seat's guest is not here yet. */
    record SeatExpected(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatExpected(this);
        }
    }

    /** The seat's guest sat down, or told their name. @param name empty if none was told */
    record SeatArrived(SeatNumber seat, String name) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatArrived(this);
        }
    }

    /**
     * The seat's guest went home; the seat no longer holds the class. If another guest shared its candle, that guest
     * goes on with it.
     */
    record SeatLeft(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatLeft(this);
        }
    }

    /** The guest of {@code with} shares the candle made at {@code seat}. */
    record SeatPaired(SeatNumber seat, SeatNumber with) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatPaired(this);
        }
    }

    /** The seat makes a candle of its own again. */
    record SeatUnpaired(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatUnpaired(this);
        }
    }

    /** The candle was poured a second time; its cure starts anew. */
    record PouredAgain(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.pouredAgain(this);
        }
    }

    record SeatNoted(SeatNumber seat, String text) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatNoted(this);
        }
    }

    record ClassNoted(String text) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.classNoted(this);
        }
    }

    /** The seat makes this one of the plan's candles. */
    record CandleChosen(SeatNumber seat, String candle) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.candleChosen(this);
        }
    }

    /** The room's thermometer was read. @param celsius degrees Celsius */
    record RoomRead(double celsius) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.roomRead(this);
        }
    }

    /** The wax in the pitcher was measured for the pour. @param celsius degrees Celsius */
    record PourRead(double celsius) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.pourRead(this);
        }
    }

    /** A thermometer pointed at the candle's surface. @param celsius degrees Celsius */
    record TemperatureRead(SeatNumber seat, double celsius) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.temperatureRead(this);
        }
    }

    /** Somebody saw that a skin had formed. */
    record SkinSeen(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.skinSeen(this);
        }
    }

    /** The instructor's hand test found the candle firm enough. */
    record JudgedSet(SeatNumber seat) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.judgedSet(this);
        }
    }

    /** A helper is on the way. @param helper the initials shown to the others */
    record HelpClaimed(SeatNumber seat, String helper) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.helpClaimed(this);
        }
    }

    /** The helper is done there. */
    record HelpSorted(SeatNumber seat, String helper) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.helpSorted(this);
        }
    }

    /** Asked, the instructor said that the seat is still at this step. */
    record StillWorking(SeatNumber seat, StepId step) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.stillWorking(this);
        }
    }

    /** The guests themselves said that they are done with this step; the instructor's tap settles it. */
    record DoneHinted(SeatNumber seat, StepId step) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.doneHinted(this);
        }
    }

    /** Whether guests may say with their own phones that they are done; they may not until the instructor allows it. */
    record GuestsMayTell(boolean on) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.guestsMayTell(this);
        }
    }

    record ActivityOpened(ActivityId activity) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityOpened(this);
        }
    }

    record ActivityClosed(ActivityId activity) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityClosed(this);
        }
    }

    /** The activity goes on for that many minutes more. */
    record ActivityExtended(ActivityId activity, int minutes) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityExtended(this);
        }
    }

    /** The activity begins at another time than the board proposed. */
    record ActivityMoved(ActivityId activity, Instant to) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityMoved(this);
        }
    }

    /** The activity does not take place tonight. */
    record ActivitySkipped(ActivityId activity) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activitySkipped(this);
        }
    }

    record ActivityJoined(SeatNumber seat, ActivityId activity) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityJoined(this);
        }
    }

    record ActivityQuit(SeatNumber seat, ActivityId activity) implements AtSeat {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityQuit(this);
        }
    }

    /**
     * The clock that the class goes by was set right: all from one event to this one happened that much later than was
     * written down. Recorded by the clock as it is right; the board's own, and never undone.
     *
     * @param from the number of the first event to move; an earlier one was written by a clock that was right
     * @param by   negative if they happened earlier; whole milliseconds, at most 200 years
     */
    record ClockShifted(long from, Duration by) implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.clockShifted(this);
        }
    }

    /** The class is over. */
    record ClassClosed() implements ClassEvent {
        @Override public <R> R match(Cases<R> cases) {
            return cases.classClosed(this);
        }
    }

    /** One method an event, so that a new event stops the build until every reader of events handles it. */
    interface Cases<R> {
        R classCreated(ClassCreated event);
        R classSetUpAgain(ClassSetUpAgain event);
        R seatAdded(SeatAdded event);
        R seatTakenAway(SeatTakenAway event);
        R guestCorrected(GuestCorrected event);
        R stepOpened(StepOpened event);
        R stepFinished(StepFinished event);
        R undone(Undone event);
        R tapRetimed(TapRetimed event);
        R tapReseated(TapReseated event);
        R seatPaused(SeatPaused event);
        R seatResumed(SeatResumed event);
        R seatExpected(SeatExpected event);
        R seatArrived(SeatArrived event);
        R seatLeft(SeatLeft event);
        R seatPaired(SeatPaired event);
        R seatUnpaired(SeatUnpaired event);
        R pouredAgain(PouredAgain event);
        R seatNoted(SeatNoted event);
        R classNoted(ClassNoted event);
        R candleChosen(CandleChosen event);
        R roomRead(RoomRead event);
        R pourRead(PourRead event);
        R temperatureRead(TemperatureRead event);
        R skinSeen(SkinSeen event);
        R judgedSet(JudgedSet event);
        R helpClaimed(HelpClaimed event);
        R helpSorted(HelpSorted event);
        R stillWorking(StillWorking event);
        R doneHinted(DoneHinted event);
        R guestsMayTell(GuestsMayTell event);
        R activityOpened(ActivityOpened event);
        R activityClosed(ActivityClosed event);
        R activityExtended(ActivityExtended event);
        R activityMoved(ActivityMoved event);
        R activitySkipped(ActivitySkipped event);
        R activityJoined(ActivityJoined event);
        R activityQuit(ActivityQuit event);
        R clockShifted(ClockShifted event);
        R classClosed(ClassClosed event);
    }
}
