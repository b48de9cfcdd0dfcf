package benchpace.files.log;

import benchpace.files.BadField;
import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.live.ClassEvent;
import benchpace.live.EventTrait;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.util.Collections;
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

    /** What a type of event is read into. */
    private record Reader(Set<Class<? extends ClassEvent>> kinds, Function<Fields, ? extends ClassEvent> read) { }

    private static final Map<String, Reader> READERS = readers();

    private EventReader() { }

    static Set<String> types() {
        return READERS.keySet();
    }

    /** The types of those events of which that holds, in a fixed order. */
    static List<String> types(EventTrait trait) {
        return READERS.entrySet().stream().filter(e -> trait.kinds().containsAll(e.getValue().kinds()))
                .map(Map.Entry::getKey).toList();
    }

    static ClassEvent read(String type, Fields fields) {
        Reader reader = READERS.get(type);
        if (reader == null) {
            throw new BadField("type", "is not a type of event" + Words.suggestion(type, types()));
        }
        return reader.read().apply(fields);
    }

    private static Map<String, Reader> readers() {
        Map<String, Reader> readers = new LinkedHashMap<>();
        theClass(readers);
        steps(readers);
        seats(readers);
        theCandle(readers);
        activities(readers);
        return Collections.unmodifiableMap(readers);
    }

    private static <E extends ClassEvent> void put(Map<String, Reader> readers, String type, Class<E> kind,
                                                   Function<Fields, E> reader) {
        readers.put(type, new Reader(Set.of(kind), reader));
    }

    private static void theClass(Map<String, Reader> readers) {
        put(readers, "create", ClassEvent.ClassCreated.class, f -> new ClassEvent.ClassCreated(SetupJson.read(f)));
        put(readers, "set-up", ClassEvent.ClassSetUpAgain.class,
                f -> new ClassEvent.ClassSetUpAgain(SetupJson.read(f)));
        readers.put("note", new Reader(Set.of(ClassEvent.SeatNoted.class, ClassEvent.ClassNoted.class),
                f -> f.has("seat") ? new ClassEvent.SeatNoted(seat(f), note(f)) : new ClassEvent.ClassNoted(note(f))));
        put(readers, "guests-may-tell", ClassEvent.GuestsMayTell.class,
                f -> new ClassEvent.GuestsMayTell(f.yesOrNo("on").orElseThrow()));
        put(readers, "shift-clock", ClassEvent.ClockShifted.class,
                f -> new ClassEvent.ClockShifted(f.whole("from", 1, Long.MAX_VALUE).orElseThrow(),
                Duration.ofMillis(f.whole("milliseconds", -LONGEST_SHIFT, LONGEST_SHIFT).orElseThrow())));
        put(readers, "close", ClassEvent.ClassClosed.class, f -> new ClassEvent.ClassClosed());
    }

    private static void steps(Map<String, Reader> readers) {
        put(readers, "open-step", ClassEvent.StepOpened.class, f -> new ClassEvent.StepOpened(step(f)));
        put(readers, "finish-step", ClassEvent.StepFinished.class, f -> new ClassEvent.StepFinished(seat(f), step(f)));
        put(readers, "still-at-it", ClassEvent.StillWorking.class, f -> new ClassEvent.StillWorking(seat(f), step(f)));
        put(readers, "guest-done", ClassEvent.DoneHinted.class, f -> new ClassEvent.DoneHinted(seat(f), step(f)));
        put(readers, "undo", ClassEvent.Undone.class, f -> new ClassEvent.Undone(seq(f)));
        put(readers, "correct-time", ClassEvent.TapRetimed.class,
                f -> new ClassEvent.TapRetimed(seq(f), f.instant("to").orElseThrow()));
        put(readers, "correct-seat", ClassEvent.TapReseated.class,
                f -> new ClassEvent.TapReseated(seq(f), seat(f, "to")));
    }

    private static void seats(Map<String, Reader> readers) {
        put(readers, "add-seat", ClassEvent.SeatAdded.class, f -> new ClassEvent.SeatAdded(SetupJson.place(f)));
        put(readers, "take-away-seat", ClassEvent.SeatTakenAway.class, f -> new ClassEvent.SeatTakenAway(seat(f)));
        put(readers, "correct-guest", ClassEvent.GuestCorrected.class, f -> {
            ClassEvent.Place guest = SetupJson.place(f);
            return new ClassEvent.GuestCorrected(guest.seat(), guest.name(), guest.party(), guest.note());
        });
        put(readers, "pause", ClassEvent.SeatPaused.class, f -> new ClassEvent.SeatPaused(seat(f)));
        put(readers, "resume", ClassEvent.SeatResumed.class, f -> new ClassEvent.SeatResumed(seat(f)));
        put(readers, "expect", ClassEvent.SeatExpected.class, f -> new ClassEvent.SeatExpected(seat(f)));
        put(readers, "arrive", ClassEvent.SeatArrived.class, f -> new ClassEvent.SeatArrived(seat(f), name(f)));
        put(readers, "leave", ClassEvent.SeatLeft.class, f -> new ClassEvent.SeatLeft(seat(f)));
        put(readers, "pair", ClassEvent.SeatPaired.class, f -> new ClassEvent.SeatPaired(seat(f), seat(f, "with")));
        put(readers, "unpair", ClassEvent.SeatUnpaired.class, f -> new ClassEvent.SeatUnpaired(seat(f)));
        put(readers, "claim", ClassEvent.HelpClaimed.class, f -> new ClassEvent.HelpClaimed(seat(f), helper(f)));
        put(readers, "sorted", ClassEvent.HelpSorted.class, f -> new ClassEvent.HelpSorted(seat(f), helper(f)));
    }

    private static void theCandle(Map<String, Reader> readers) {
        put(readers, "poured-again", ClassEvent.PouredAgain.class, f -> new ClassEvent.PouredAgain(seat(f)));
        put(readers, "choose-candle", ClassEvent.CandleChosen.class,
                f -> new ClassEvent.CandleChosen(seat(f), f.line("candle", 1, 40).orElseThrow()));
        put(readers, "read-room", ClassEvent.RoomRead.class,
                f -> new ClassEvent.RoomRead(f.number("celsius", COLDEST, HOTTEST).orElseThrow()));
        put(readers, "read-pour", ClassEvent.PourRead.class,
                f -> new ClassEvent.PourRead(f.number("celsius", COLDEST, HOTTEST).orElseThrow()));
        put(readers, "read-temperature", ClassEvent.TemperatureRead.class,
                f -> new ClassEvent.TemperatureRead(seat(f), f.number("celsius", COLDEST, HOTTEST).orElseThrow()));
        put(readers, "judge-skin", ClassEvent.SkinSeen.class, f -> new ClassEvent.SkinSeen(seat(f)));
        put(readers, "judge-set", ClassEvent.JudgedSet.class, f -> new ClassEvent.JudgedSet(seat(f)));
    }

    private static void activities(Map<String, Reader> readers) {
        put(readers, "open-activity", ClassEvent.ActivityOpened.class, f -> new ClassEvent.ActivityOpened(activity(f)));
        put(readers, "close-activity", ClassEvent.ActivityClosed.class,
                f -> new ClassEvent.ActivityClosed(activity(f)));
        put(readers, "extend-activity", ClassEvent.ActivityExtended.class,
                f -> new ClassEvent.ActivityExtended(activity(f), minutes(f)));
        put(readers, "move-activity", ClassEvent.ActivityMoved.class,
                f -> new ClassEvent.ActivityMoved(activity(f), f.instant("to").orElseThrow()));
        put(readers, "skip-activity", ClassEvent.ActivitySkipped.class,
                f -> new ClassEvent.ActivitySkipped(activity(f)));
        put(readers, "join-activity", ClassEvent.ActivityJoined.class,
                f -> new ClassEvent.ActivityJoined(seat(f), activity(f)));
        put(readers, "quit-activity", ClassEvent.ActivityQuit.class,
                f -> new ClassEvent.ActivityQuit(seat(f), activity(f)));
    }

    private static SeatNumber seat(Fields fields) {
        return seat(fields, "seat");
    }

    static SeatNumber seat(Fields fields, String field) {
        return new SeatNumber(fields.whole(field, 1, SeatNumber.MOST).orElseThrow().intValue());
    }

    private static StepId step(Fields fields) {
        return fields.named("step", id -> new StepId(id.intern())).orElseThrow(); // of a few, said in most events
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
