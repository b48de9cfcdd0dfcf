package benchpace.files.log;

import benchpace.files.BadField;
import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.files.plan.PlanReader;
import benchpace.live.ClassEvent;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads what {@link EventWriter} writes. The fields given must belong to a listener that throws, so that whatever was
 * asked for is there.
 */
final class EventReader {
    /** What any thermometer at a candle can show, degrees Celsius; the rules of the class are narrower. */
    private static final double COLDEST = -60;
    private static final double HOTTEST = 500;
    private static final int MINUTES_OF_A_DAY = 24 * 60;
    /** As long as the time is in which there are classes. */
    private static final long LONGEST_SHIFT = Duration.ofDays(200 * 366).toMillis();

    private static final Map<String, Function<Fields, ClassEvent>> READERS = readers();

    private EventReader() { }

    static Set<String> types() {
        return READERS.keySet();
    }

    static ClassEvent read(String type, Fields fields) {
        Function<Fields, ClassEvent> reader = READERS.get(type);
        if (reader == null) {
            throw new BadField("type", "is not a type of event" + Words.suggestion(type, types()));
        }
        return reader.apply(fields);
    }

    private static Map<String, Function<Fields, ClassEvent>> readers() {
        Map<String, Function<Fields, ClassEvent>> readers = new LinkedHashMap<>();
        theClass(readers);
        steps(readers);
        seats(readers);
        theCandle(readers);
        activities(readers);
        return Collections.unmodifiableMap(readers);
    }

    private static void theClass(Map<String, Function<Fields, ClassEvent>> readers) {
        readers.put("create", EventReader::created);
        readers.put("note", f -> f.has("seat")
                ? new ClassEvent.SeatNoted(seat(f), note(f)) : new ClassEvent.ClassNoted(note(f)));
        readers.put("guests-may-tell", f -> new ClassEvent.GuestsMayTell(f.yesOrNo("on").orElseThrow()));
        readers.put("shift-clock", f -> new ClassEvent.ClockShifted(f.whole("from", 1, Long.MAX_VALUE).orElseThrow(),
                Duration.ofMillis(f.whole("milliseconds", -LONGEST_SHIFT, LONGEST_SHIFT).orElseThrow())));
        readers.put("close", f -> new ClassEvent.ClassClosed());
    }

    private static ClassEvent created(Fields fields) {
        String name = fields.line("name", 1, 80).orElseThrow();
        Instant startsAt = fields.instant("startsAt").orElseThrow();
        Plan plan = fields.tree("plan", PlanReader::read).orElseThrow();
        List<ClassEvent.Place> places = new ArrayList<>();
        Set<SeatNumber> taken = new HashSet<>();
        fields.eachObject("seats", 1, SeatNumber.MOST, place -> {
            SeatNumber seat = seat(place);
            if (!taken.add(seat)) {
                place.tell("seat", "names seat " + seat + " a second time");
            }
            places.add(new ClassEvent.Place(seat, name(place)));
        });
        return new ClassEvent.ClassCreated(plan, name, startsAt, places);
    }

    private static void steps(Map<String, Function<Fields, ClassEvent>> readers) {
        readers.put("open-step", f -> new ClassEvent.StepOpened(step(f)));
        readers.put("finish-step", f -> new ClassEvent.StepFinished(seat(f), step(f)));
        readers.put("still-at-it", f -> new ClassEvent.StillWorking(seat(f), step(f)));
        readers.put("guest-done", f -> new ClassEvent.DoneHinted(seat(f), step(f)));
        readers.put("undo", f -> new ClassEvent.Undone(seq(f)));
        readers.put("correct-time", f -> new ClassEvent.TapRetimed(seq(f), f.instant("to").orElseThrow()));
        readers.put("correct-seat", f -> new ClassEvent.TapReseated(seq(f), seat(f, "to")));
    }

    private static void seats(Map<String, Function<Fields, ClassEvent>> readers) {
        readers.put("pause", f -> new ClassEvent.SeatPaused(seat(f)));
        readers.put("resume", f -> new ClassEvent.SeatResumed(seat(f)));
        readers.put("expect", f -> new ClassEvent.SeatExpected(seat(f)));
        readers.put("arrive", f -> new ClassEvent.SeatArrived(seat(f), name(f)));
        readers.put("leave", f -> new ClassEvent.SeatLeft(seat(f)));
        readers.put("pair", f -> new ClassEvent.SeatPaired(seat(f), seat(f, "with")));
        readers.put("unpair", f -> new ClassEvent.SeatUnpaired(seat(f)));
        readers.put("claim", f -> new ClassEvent.HelpClaimed(seat(f), helper(f)));
        readers.put("sorted", f -> new ClassEvent.HelpSorted(seat(f), helper(f)));
    }

    private static void theCandle(Map<String, Function<Fields, ClassEvent>> readers) {
        readers.put("poured-again", f -> new ClassEvent.PouredAgain(seat(f)));
        readers.put("choose-candle", f -> new ClassEvent.CandleChosen(seat(f), f.line("candle", 1, 40).orElseThrow()));
        readers.put("read-room", f -> new ClassEvent.RoomRead(f.number("celsius", COLDEST, HOTTEST).orElseThrow()));
        readers.put("read-pour", f -> new ClassEvent.PourRead(f.number("celsius", COLDEST, HOTTEST).orElseThrow()));
        readers.put("read-temperature", f ->
                new ClassEvent.TemperatureRead(seat(f), f.number("celsius", COLDEST, HOTTEST).orElseThrow()));
        readers.put("judge-skin", f -> new ClassEvent.SkinSeen(seat(f)));
        readers.put("judge-set", f -> new ClassEvent.JudgedSet(seat(f)));
    }

    private static void activities(Map<String, Function<Fields, ClassEvent>> readers) {
        readers.put("open-activity", f -> new ClassEvent.ActivityOpened(activity(f)));
        readers.put("close-activity", f -> new ClassEvent.ActivityClosed(activity(f)));
        readers.put("extend-activity", f -> new ClassEvent.ActivityExtended(activity(f), minutes(f)));
        readers.put("move-activity", f -> new ClassEvent.ActivityMoved(activity(f), f.instant("to").orElseThrow()));
        readers.put("skip-activity", f -> new ClassEvent.ActivitySkipped(activity(f)));
        readers.put("join-activity", f -> new ClassEvent.ActivityJoined(seat(f), activity(f)));
        readers.put("quit-activity", f -> new ClassEvent.ActivityQuit(seat(f), activity(f)));
    }

    private static SeatNumber seat(Fields fields) {
        return seat(fields, "seat");
    }

    private static SeatNumber seat(Fields fields, String field) {
        return new SeatNumber(fields.whole(field, 1, SeatNumber.MOST).orElseThrow().intValue());
    }

    private static StepId step(Fields fields) {
        return fields.named("step", StepId::new).orElseThrow();
    }

    private static ActivityId activity(Fields fields) {
        return fields.named("activity", ActivityId::new).orElseThrow();
    }

    private static long seq(Fields fields) {
        return fields.whole("seq", 1, Long.MAX_VALUE).orElseThrow();
    }

    private static int minutes(Fields fields) {
        return fields.whole("minutes", 1, MINUTES_OF_A_DAY).orElseThrow().intValue();
    }

    private static String name(Fields fields) {
        return fields.line("name", 0, EventJson.LONGEST_NAME).orElseThrow();
    }

    private static String helper(Fields fields) {
        return fields.line("helper", 1, EventJson.LONGEST_HELPER).orElseThrow();
    }

    private static String note(Fields fields) {
        return fields.line("text", 1, EventJson.LONGEST_NOTE).orElseThrow();
    }
}
