package benchpace.files.log;

import benchpace.files.BadField;
import benchpace.files.Fields;
import benchpace.files.Json;
import benchpace.live.ClassEvent;
import benchpace.live.Era;
import benchpace.live.EventTrait;
import benchpace.live.Recorded;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * Events as JSON: the name of their type and their fields, in the store and on the wire alike.
 *
 * <p>Types, names and meanings are a promise to old files: none is ever renamed or dropped, and a new field has a
 * default. A recorded log of every released version is read back in the tests. Fields that are not known are passed
 * over, so that newer senders are understood.
 */
public final class EventJson {
    /** Longest note, in characters. */
    static final int LONGEST_NOTE = 500;
    /** Longest first name of a guest, in characters. */
    public static final int LONGEST_NAME = 40;
    /** Longest word for a party, in characters. */
    public static final int LONGEST_PARTY = 40;
    /** Longest note of what to mind with a guest, in characters. */
    public static final int LONGEST_MIND = 200;
    /** Longest id of a candle, in characters. */
    public static final int LONGEST_CANDLE = 40;
    /** Longest initials of a helper, in characters. */
    static final int LONGEST_HELPER = 12;

    private EventJson() { }

    /** Every type there is. */
    public static Set<String> types() {
        return EventReader.types();
    }

    /** The types of those events of which that holds, in a fixed order. */
    public static List<String> types(EventTrait trait) {
        return EventReader.types(trait);
    }

    /** The name of an event's type, {@code finish-step}. */
    public static String type(ClassEvent event) {
        return event.match(EventWriter.WRITER).type();
    }

    /** What the event says, without its type, number, time and author. A fresh object each time. */
    public static ObjectNode fields(ClassEvent event) {
        return event.match(EventWriter.WRITER).fields();
    }

    /**
     * Reads what {@link #type} and {@link #fields} wrote, or what a client sent.
     *
     * @throws BadField for any type or JSON that is no event; nothing else is thrown
     */
    public static ClassEvent read(String type, JsonNode fields) {
        JsonNode asOfToday = type.equals("create") ? OlderNames.onOneLine(fields) : fields;
        return EventReader.read(type, new Fields(asOfToday, "", problem -> {
            throw BadField.of(problem);
        }));
    }

    /** An instant beside an event. @throws BadField if no event may bear it */
    public static Instant time(String field, Instant instant) {
        if (!Era.holds(instant)) {
            throw new BadField(field, Fields.TOO_FAR);
        }
        return instant;
    }

    /**
     * An event as clients see it: number, type, times, author, the mark of its device if it has one, then its own
     * fields. Where those hold a number of another event ({@code seq} of a command), it is called {@code target} here.
     */
    public static ObjectNode line(Recorded recorded) {
        EventWriter.Written written = recorded.event().match(EventWriter.WRITER);
        ObjectNode line = Json.object()
                .put("seq", recorded.seq())
                .put("type", written.type())
                .put("at", recorded.at().toString())
                .put("recordedAt", recorded.recordedAt().toString())
                .put("by", recorded.by());
        if (!recorded.device().isEmpty()) {
            line.put("device", recorded.device());
        }
        written.fields().properties().forEach(field ->
                line.set(field.getKey().equals("seq") ? "target" : field.getKey(), field.getValue()));
        return line;
    }
}
