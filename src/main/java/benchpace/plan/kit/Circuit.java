package benchpace.plan.kit;

import benchpace.plan.Names;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One of the venue's circuits: all the sockets behind one breaker or fuse. Voltage and rule are never guessed.
 *
 * @param volts nominal, 50 to 500
 * @param amps  of the breaker or fuse, above 0 and at most 200
 * @param rule  by which its load is judged
 */
public record Circuit(String id, String name, OptionalDouble volts, OptionalDouble amps, Optional<Rule> rule) {

    /** How much of a breaker may be used, by region. */
    public enum Rule { NORTH_AMERICA, UK_13, SCHUKO_16, PLAIN }

    public Circuit {
        Names.id("the id of a circuit", id);
        Names.required("the name of a circuit", name, 60);
        volts.ifPresent(v -> Figures.within("the voltage of \"" + name + "\"", v, 50, 500, "V"));
        amps.ifPresent(a -> Figures.within("the amperes of \"" + name + "\"", a, 0.5, 200, "A"));
    }
}
