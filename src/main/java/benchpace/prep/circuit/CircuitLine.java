package benchpace.prep.circuit;

import benchpace.plan.kit.Circuit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a circuit has to carry. A figure is absent if it cannot be worked out; the sheet's problems say why.
 *
 * @param plugged    what is plugged in, as far as its watts are known
 * @param designAmps absent if the rule, the voltage or the watts of an appliance are wanting
 * @param verdict    absent if {@code designAmps} is, or the circuit's amperes are wanting
 * @param reasons    at least one if there is a verdict
 * @param advice     what would help; empty unless it is too much, or nothing would
 */
public record CircuitLine(Circuit circuit, List<Plugged> plugged, OptionalDouble designAmps, Optional<Verdict> verdict,
                          List<CircuitReason> reasons, List<CircuitAdvice> advice) {
    public CircuitLine {
        plugged = List.copyOf(plugged);
        reasons = List.copyOf(reasons);
        advice = List.copyOf(advice);
    }

    CircuitLine with(List<CircuitAdvice> whatHelps) {
        return new CircuitLine(circuit, plugged, designAmps, verdict, reasons, whatHelps);
    }
}
