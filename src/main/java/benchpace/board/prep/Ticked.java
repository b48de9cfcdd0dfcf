package benchpace.board.prep;

import benchpace.store.PrepTicks.Tick;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * All that is ticked off in a class.
 *
 * @param revision grows with every change while the board runs, over all classes
 * @param ticks    by item, in the order in which they were made
 */
public record Ticked(long revision, Map<String, Tick> ticks) {
    public static final Ticked NOTHING = new Ticked(0, Map.of());

    public Ticked {
        ticks = Collections.unmodifiableMap(new LinkedHashMap<>(ticks));
    }

    public Optional<Tick> of(String item) {
        return Optional.ofNullable(ticks.get(item));
    }
}
