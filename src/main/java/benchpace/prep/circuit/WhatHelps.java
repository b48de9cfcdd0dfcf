package benchpace.prep.circuit;

import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.prep.Whole;
import benchpace.prep.melter.MelterLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What would bring a circuit that is over back within its rule: one appliance moved, one kept off while a melter is on,
 * or a smaller melter. Each is worked out anew; what does not suffice by itself is not told.
 */
final class WhatHelps {
    /** A smaller melter is looked for in steps of so many watts, as melters are sold. */
    private static final double STEP_WATTS = 50;

    private WhatHelps() { }

    static List<CircuitAdvice> of(CircuitLine line, List<CircuitLine> all, List<MelterLine> melters, Kit kit) {
        if (line.verdict().filter(v -> v == Verdict.OVER).isEmpty()) {
            return List.of();
        }
        List<CircuitAdvice> advice = new ArrayList<>();
        for (Plugged p : line.plugged()) {
            move(p, line, all).ifPresent(advice::add);
        }
        for (Plugged p : line.plugged()) {
            keepOff(p, line).ifPresent(advice::add);
        }
        for (Plugged p : line.plugged()) {
            smaller(p, line, melters, kit).ifPresent(advice::add);
        }
        return advice;
    }

    /** To the circuit that is left the freest by it, if neither is over then. */
    private static Optional<CircuitAdvice> move(Plugged p, CircuitLine here, List<CircuitLine> all) {
        List<Plugged> left = without(p, here.plugged());
        if (verdict(here.circuit(), left) == Verdict.OVER) {
            return Optional.empty();
        }
        return all.stream()
                .filter(other -> other != here && other.verdict().isPresent())
                .map(there -> moved(p, here.circuit(), left, there))
                .filter(move -> move.otherVerdict() != Verdict.OVER)
                .min(Comparator.comparing(CircuitAdvice.Move::otherVerdict)
                        .thenComparing(CircuitAdvice.Move::otherAmps))
                .map(move -> move);
    }

    private static CircuitAdvice.Move moved(Plugged p, Circuit here, List<Plugged> left, CircuitLine there) {
        Plugged over = new Plugged(p.id(), p.name(), p.watts(), p.watts() / there.circuit().volts().getAsDouble(),
                p.onMinutes(), p.melter());
        List<Plugged> joined = Stream.concat(there.plugged().stream(), Stream.of(over)).toList();
        return new CircuitAdvice.Move(p.id(), p.name(), there.circuit().name(), design(here, left),
                verdict(here, left), design(there.circuit(), joined), verdict(there.circuit(), joined));
    }

    /** Both without it and with it but no melter on, the circuit must do. */
    private static Optional<CircuitAdvice> keepOff(Plugged p, CircuitLine line) {
        if (p.melter() || line.plugged().stream().noneMatch(Plugged::melter)) {
            return Optional.empty();
        }
        List<Plugged> melting = without(p, line.plugged());
        List<Plugged> otherwise = line.plugged().stream().filter(other -> !other.melter()).toList();
        Verdict verdict = worse(verdict(line.circuit(), melting), verdict(line.circuit(), otherwise));
        return verdict == Verdict.OVER ? Optional.empty()
                : Optional.of(new CircuitAdvice.KeepOff(p.id(), p.name(),
                        Math.max(design(line.circuit(), melting), design(line.circuit(), otherwise)), verdict));
    }

    private static Optional<CircuitAdvice> smaller(Plugged p, CircuitLine line, List<MelterLine> melters, Kit kit) {
        if (!p.melter()) {
            return Optional.empty();
        }
        for (double watts = STEP_WATTS * (Whole.up(p.watts() / STEP_WATTS) - 1); watts > 0; watts -= STEP_WATTS) {
            List<Plugged> changed = Stream.concat(without(p, line.plugged()).stream(), Stream.of(p.at(watts))).toList();
            Verdict verdict = verdict(line.circuit(), changed);
            if (verdict != Verdict.OVER) {
                return Optional.of(new CircuitAdvice.SmallerMelter(p.id(), p.name(), watts,
                        design(line.circuit(), changed), verdict, meltMinutes(p, watts, melters, kit)));
            }
        }
        return Optional.empty();
    }

    /** The same heat through fewer watts. */
    private static OptionalDouble meltMinutes(Plugged p, double watts, List<MelterLine> melters, Kit kit) {
        Optional<String> melter = kit.appliances().stream().filter(a -> a.id().equals(p.id())).findFirst()
                .flatMap(Appliance::melter);
        return melters.stream().filter(m -> melter.filter(m.melter().id()::equals).isPresent())
                .flatMapToDouble(m -> m.meltMinutes().stream()).map(minutes -> minutes * p.watts() / watts).findFirst();
    }

    private static List<Plugged> without(Plugged one, List<Plugged> plugged) {
        return plugged.stream().filter(p -> !p.id().equals(one.id())).toList();
    }

    private static Verdict worse(Verdict one, Verdict other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    private static double design(Circuit circuit, List<Plugged> plugged) {
        return CircuitRule.designAmps(circuit.rule().orElseThrow(), plugged);
    }

    private static Verdict verdict(Circuit circuit, List<Plugged> plugged) {
        return CircuitRule.verdict(circuit.rule().orElseThrow(), circuit.amps().getAsDouble(), plugged);
    }
}
