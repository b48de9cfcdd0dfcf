package benchpace.plan.kit;

import benchpace.plan.Names;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that is plugged in.
 *
 * @param watts     from its rating plate, above 0 and at most 50,000; within a {@link Kit} a melter's own
 * @param melter    the id of the melter that it is, if it is one
 * @param circuit   the id of the circuit it is plugged into; absent if that is not settled yet
 * @param onMinutes how long it stays on, warming up counted, above 0 and at most 1440
 */
public record Appliance(String id, String name, OptionalDouble watts, Optional<String> melter,
                        Optional<String> circuit, double onMinutes) {
    public Appliance {
        Names.id("the id of an appliance", id);
        Names.required("the name of an appliance", name, 60);
        watts.ifPresent(w -> Figures.within("the watts of \"" + name + "\"", w, 0.1, 50_000, "W"));
        Figures.within("the time that \"" + name + "\" is on", onMinutes, 0.1, 1440, "minutes");
    }

    /** The same with other watts. */
    Appliance taking(OptionalDouble otherWatts) {
        return new Appliance(id, name, otherWatts, melter, circuit, onMinutes);
    }
}
