package benchpace.files.log;

import benchpace.files.Json;
import benchpace.live.ClassEvent;
import benchpace.live.Setup;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;

/** Writes what {@link EventReader} reads: the one list of types and fields. A new event breaks the build here. */
final class EventWriter implements ClassEvent.Cases<EventWriter.Written> {
    static final EventWriter WRITER = new EventWriter();

    private EventWriter() { }

    /** An event's type and what it says. The methods put one field more and return the same. */
    record Written(String type, ObjectNode fields) {
        private Written seat(SeatNumber seat) {
            return seat("seat", seat);
        }

        private Written seat(String field, SeatNumber seat) {
            fields.put(field, seat.value());
            return this;
        }

        private Written step(StepId step) {
            return text("step", step.value());
        }

        private Written activity(ActivityId activity) {
            return text("activity", activity.value());
        }

        private Written seq(long seq) {
            fields.put("seq", seq);
            return this;
        }

        private Written instant(String field, Instant instant) {
            return text(field, instant.toString());
        }

        private Written celsius(double celsius) {
            fields.put("celsius", celsius);
            return this;
        }

        private Written yesOrNo(String field, boolean yes) {
            fields.put(field, yes);
            return this;
        }

        private Written text(String field, String text) {
            fields.put(field, text);
            return this;
        }
    }

    private static Written type(String type) {
        return new Written(type, Json.object());
    }

    @Override public Written classCreated(ClassEvent.ClassCreated event) {
        return setUp("create", event.setup());
    }

    @Override public Written classSetUpAgain(ClassEvent.ClassSetUpAgain event) {
        return setUp("set-up", event.setup());
    }

    private static Written setUp(String type, Setup setup) {
        Written written = type(type);
        SetupJson.write(setup, written.fields());
        return written;
    }

    @Override public Written seatAdded(ClassEvent.SeatAdded event) {
        return new Written("add-seat", SetupJson.write(event.place(), Json.object()));
    }

    @Override public Written seatTakenAway(ClassEvent.SeatTakenAway event) {
        return type("take-away-seat").seat(event.seat());
    }

    @Override public Written guestCorrected(ClassEvent.GuestCorrected event) {
        return new Written("correct-guest", SetupJson.write(event.seat(), event.name(), event.party(), event.note(),
                Json.object()));
    }

    @Override public Written stepOpened(ClassEvent.StepOpened event) {
        return type("open-step").step(event.step());
    }

    @Override public Written stepFinished(ClassEvent.StepFinished event) {
        return type("finish-step").seat(event.seat()).step(event.step());
    }

    @Override public Written undone(ClassEvent.Undone event) {
        return type("undo").seq(event.seq());
    }

    @Override public Written tapRetimed(ClassEvent.TapRetimed event) {
        return type("correct-time").seq(event.seq()).instant("to", event.to());
    }

    @Override public Written tapReseated(ClassEvent.TapReseated event) {
        return type("correct-seat").seq(event.seq()).seat("to", event.to());
    }

    @Override public Written seatPaused(ClassEvent.SeatPaused event) {
        return type("pause").seat(event.seat());
    }

    @Override public Written seatResumed(ClassEvent.SeatResumed event) {
        return type("resume").seat(event.seat());
    }

    @Override public Written seatExpected(ClassEvent.SeatExpected event) {
        return type("expect").seat(event.seat());
    }

    @Override public Written seatArrived(ClassEvent.SeatArrived event) {
        return type("arrive").seat(event.seat()).text("name", event.name());
    }

    @Override public Written seatLeft(ClassEvent.SeatLeft event) {
        return type("leave").seat(event.seat());
    }

    @Override public Written seatPaired(ClassEvent.SeatPaired event) {
        return type("pair").seat(event.seat()).seat("with", event.with());
    }

    @Override public Written seatUnpaired(ClassEvent.SeatUnpaired event) {
        return type("unpair").seat(event.seat());
    }

    @Override public Written pouredAgain(ClassEvent.PouredAgain event) {
        return type("poured-again").seat(event.seat());
    }

    @Override public Written seatNoted(ClassEvent.SeatNoted event) {
        return type("note").seat(event.seat()).text("text", event.text());
    }

    @Override public Written classNoted(ClassEvent.ClassNoted event) {
        return type("note").text("text", event.text());
    }

    @Override public Written temperatureRead(ClassEvent.TemperatureRead event) {
        return type("read-temperature").seat(event.seat()).celsius(event.celsius());
    }

    @Override public Written candleChosen(ClassEvent.CandleChosen event) {
        return type("choose-candle").seat(event.seat()).text("candle", event.candle());
    }

    @Override public Written roomRead(ClassEvent.RoomRead event) {
        return type("read-room").celsius(event.celsius());
    }

    @Override public Written pourRead(ClassEvent.PourRead event) {
        return type("read-pour").celsius(event.celsius());
    }

    @Override public Written skinSeen(ClassEvent.SkinSeen event) {
        return type("judge-skin").seat(event.seat());
    }

    @Override public Written judgedSet(ClassEvent.JudgedSet event) {
        return type("judge-set").seat(event.seat());
    }

    @Override public Written helpClaimed(ClassEvent.HelpClaimed event) {
        return type("claim").seat(event.seat()).text("helper", event.helper());
    }

    @Override public Written helpSorted(ClassEvent.HelpSorted event) {
        return type("sorted").seat(event.seat()).text("helper", event.helper());
    }

    @Override public Written stillWorking(ClassEvent.StillWorking event) {
        return type("still-at-it").seat(event.seat()).step(event.step());
    }

    @Override public Written doneHinted(ClassEvent.DoneHinted event) {
        return type("guest-done").seat(event.seat()).step(event.step());
    }

    @Override public Written guestsMayTell(ClassEvent.GuestsMayTell event) {
        return type("guests-may-tell").yesOrNo("on", event.on());
    }

    @Override public Written activityOpened(ClassEvent.ActivityOpened event) {
        return type("open-activity").activity(event.activity());
    }

    @Override public Written activityClosed(ClassEvent.ActivityClosed event) {
        return type("close-activity").activity(event.activity());
    }

    @Override public Written activityExtended(ClassEvent.ActivityExtended event) {
        Written written = type("extend-activity").activity(event.activity());
        written.fields().put("minutes", event.minutes());
        return written;
    }

    @Override public Written activityMoved(ClassEvent.ActivityMoved event) {
        return type("move-activity").activity(event.activity()).instant("to", event.to());
    }

    @Override public Written activitySkipped(ClassEvent.ActivitySkipped event) {
        return type("skip-activity").activity(event.activity());
    }

    @Override public Written activityJoined(ClassEvent.ActivityJoined event) {
        return type("join-activity").seat(event.seat()).activity(event.activity());
    }

    @Override public Written activityQuit(ClassEvent.ActivityQuit event) {
        return type("quit-activity").seat(event.seat()).activity(event.activity());
    }

    @Override public Written clockShifted(ClassEvent.ClockShifted event) {
        Written written = type("shift-clock");
        written.fields().put("from", event.from()).put("milliseconds", event.by().toMillis());
        return written;
    }

    @Override public Written classClosed(ClassEvent.ClassClosed event) {
        return type("close");
    }
}
