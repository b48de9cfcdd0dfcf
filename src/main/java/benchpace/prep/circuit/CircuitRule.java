package benchpace.prep.circuit;

import benchpace.plan.kit.Circuit.Rule;
import benchpace.prep.Whole;
import benchpace.prep.circuit.CircuitReason.Alone;
import benchpace.prep.circuit.CircuitReason.AloneLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of a breaker may be used.
 *
 * <ul>
 * <li>{@code NORTH_AMERICA}: other + 1.25 x continuous (NEC 210.19(A)(1), 210.20(A), second hand); one appliance with
 *     cord and plug at most 80 % of the circuit (210.23(A)(1), from memory).
 * <li>{@code UK_13}: the sum; one plug at most 13 A, its fuse (BS 1363).
 * <li>{@code SCHUKO_16}: the sum; one plug at most 16 A, and at most 10 A if it is on longer than an hour (trade
 *     literature: the socket is tested for an hour and not meant for continuous load).
 * <li>{@code PLAIN}: the sum alone.
 * </ul>
 */
public final class CircuitRule {
    public static final double CONTINUOUS_FACTOR = 1.25;
    public static final double SHARE_OF_ONE = 0.8;
    public static final double UK_PLUG_AMPS = 13;
    public static final double SCHUKO_AMPS = 16;
    public static final double SCHUKO_LONG_AMPS = 10;
    public static final double SCHUKO_LONG_MINUTES = 60;
    /** Beyond this share of the circuit it is close. */
    public static final double CLOSE = 0.9;

    private CircuitRule() { }

    /** What the circuit is counted to carry, amperes. */
    public static double designAmps(Rule rule, List<Plugged> plugged) {
        return plugged.stream().mapToDouble(p -> counted(rule, p)).sum();
    }

    private static double counted(Rule rule, Plugged p) {
        return rule == Rule.NORTH_AMERICA && p.continuous() ? CONTINUOUS_FACTOR * p.amps() : p.amps();
    }

    /** Every reason why it is too much; empty if it is not. @param amps of the circuit */
    static List<CircuitReason> over(Rule rule, double amps, List<Plugged> plugged) {
        List<CircuitReason> reasons = new ArrayList<>();
        double design = designAmps(rule, plugged);
        if (Whole.over(design, amps)) {
            double continuous = plugged.stream().filter(Plugged::continuous).mapToDouble(Plugged::amps).sum();
            double all = plugged.stream().mapToDouble(Plugged::amps).sum();
            reasons.add(new CircuitReason.Together(design, amps, all - continuous, continuous));
        }
        plugged.forEach(p -> alone(rule, amps, p).ifPresent(reasons::add));
        return reasons;
    }

    private static Optional<CircuitReason> alone(Rule rule, double amps, Plugged p) {
        return switch (rule) {
            case NORTH_AMERICA -> limit(p, SHARE_OF_ONE * amps, AloneLimit.SHARE_OF_CIRCUIT);
            case UK_13 -> limit(p, UK_PLUG_AMPS, AloneLimit.PLUG);
            case SCHUKO_16 -> limit(p, SCHUKO_AMPS, AloneLimit.PLUG).or(() -> p.onMinutes() > SCHUKO_LONG_MINUTES
                    ? limit(p, SCHUKO_LONG_AMPS, AloneLimit.PLUG_FOR_LONG) : Optional.empty());
            case PLAIN -> Optional.empty();
        };
    }

    private static Optional<CircuitReason> limit(Plugged p, double most, AloneLimit limit) {
        return Whole.over(p.amps(), most) ? Optional.of(new Alone(p.name(), p.amps(), most, limit)) : Optional.empty();
    }

    static List<CircuitReason> reasons(Rule rule, double amps, List<Plugged> plugged) {
        List<CircuitReason> over = over(rule, amps, plugged);
        double design = designAmps(rule, plugged);
        return !over.isEmpty() ? over
                : List.of(Whole.over(design, CLOSE * amps) ? new CircuitReason.NearlyAll(design, amps)
                        : new CircuitReason.Within(design, amps));
    }

    public static Verdict verdict(Rule rule, double amps, List<Plugged> plugged) {
        return !over(rule, amps, plugged).isEmpty() ? Verdict.OVER
                : Whole.over(designAmps(rule, plugged), CLOSE * amps) ? Verdict.CLOSE : Verdict.FITS;
    }
}
