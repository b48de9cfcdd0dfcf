package benchpace.files.export;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.files.log.StoredEvent;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.plan.StandIns;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;

/** The lines of a class's events, each made as it is asked for. May be gone through more than once. */
public final class EventLines implements Iterable<ObjectNode> {
    private final List<?> events;
    private final boolean guests;

    private EventLines(List<?> events, boolean guests) {
        this.events = events;
        this.guests = guests;
    }

    public static EventLines of(List<Recorded> log) {
        return new EventLines(List.copyOf(log), true);
    }

    /** Also of events that cannot be read: what is known of those, and what stands there in {@code unreadable}. */
    public static EventLines stored(List<StoredEvent> log) {
        return new EventLines(List.copyOf(log), true);
    }

    /** The same without the guests. */
    public EventLines withoutGuests() {
        return new EventLines(events, false);
    }

    @Override public Iterator<ObjectNode> iterator() {
        Nameless nameless = Nameless.ofGuests();
        Function<Recorded, ObjectNode> told = guests ? EventJson::line : event -> EventJson.line(nameless.of(event));
        return events.stream().map(event -> line(event, told)).iterator();
    }

    private ObjectNode line(Object event, Function<Recorded, ObjectNode> told) {
        if (event instanceof StoredEvent.Unreadable odd) {
            ObjectNode line = Json.object().put("seq", odd.seq()).put("type", odd.type())
                    .put("at", odd.at().toString()).put("recordedAt", odd.recordedAt().toString()).put("by", odd.by());
            if (!odd.device().isEmpty()) {
                line.put("device", odd.device());
            }
            return line.put("unreadable", guests ? odd.payload() : StandIns.prose(odd.payload()));
        }
        return told.apply(event instanceof StoredEvent.Sound sound ? sound.event() : (Recorded) event);
    }
}
