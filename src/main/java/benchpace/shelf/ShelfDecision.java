package benchpace.shelf;

import java.util.List;

/** What the shelf says to a wish: the events to record, or why not. */
public sealed interface ShelfDecision {
    /** @param events to be recorded, in order; none when the wish already holds */
    record Accepted(List<ShelfEvent> events) implements ShelfDecision {
        public Accepted {
            events = List.copyOf(events);
        }
    }

    record Refused(ShelfRefusal why) implements ShelfDecision { }

    static ShelfDecision accept(ShelfEvent... events) {
        return new Accepted(List.of(events));
    }

    static ShelfDecision refuse(ShelfRefusal why) {
        return new Refused(why);
    }
}
