package benchpace.prep.circuit;

import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.prep.Caution;
import benchpace.prep.Figure;
import benchpace.prep.PrepProblem;
import benchpace.prep.melter.MelterLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The circuits of a venue, with what the plan plugs in; a melter without watts is asked for among the melters. */
public record CircuitPart(List<CircuitLine> lines, List<PrepProblem> problems, List<Caution> cautions) {
    public CircuitPart {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
        cautions = List.copyOf(cautions);
    }

    /** @param promisedMinutes how long the class is to last, for how long melters stay on */
    public static CircuitPart of(Kit kit, List<MelterLine> melters, double promisedMinutes) {
        List<PrepProblem> problems = new ArrayList<>();
        kit.appliances().forEach(appliance -> wanting(appliance, problems));
        List<CircuitLine> lines = kit.circuits().stream().map(circuit -> line(circuit, kit, problems)).toList();
        List<CircuitLine> advised = lines.stream().map(line -> line.with(WhatHelps.of(line, lines, melters, kit)))
                .toList();
        return new CircuitPart(advised, problems, cautions(kit, melters, promisedMinutes));
    }

    private static void wanting(Appliance appliance, List<PrepProblem> problems) {
        if (appliance.circuit().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.APPLIANCE_CIRCUIT, appliance.id(), appliance.name()));
        }
        if (appliance.melter().isEmpty() && appliance.watts().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.APPLIANCE_WATTS, appliance.id(), appliance.name()));
        }
    }

    private static CircuitLine line(Circuit circuit, Kit kit, List<PrepProblem> problems) {
        wanting(circuit, problems);
        List<Appliance> here = kit.appliances().stream()
                .filter(a -> a.circuit().filter(circuit.id()::equals).isPresent()).toList();
        List<Plugged> plugged = circuit.volts().isEmpty() ? List.of() : here.stream()
                .filter(a -> a.watts().isPresent())
                .map(a -> plugged(a, a.watts().getAsDouble(), circuit.volts().getAsDouble())).toList();
        boolean counted = plugged.size() == here.size() && circuit.volts().isPresent() && circuit.rule().isPresent();
        if (!counted) {
            return new CircuitLine(circuit, plugged, OptionalDouble.empty(), Optional.empty(), List.of(), List.of());
        }
        Circuit.Rule rule = circuit.rule().get();
        OptionalDouble design = OptionalDouble.of(CircuitRule.designAmps(rule, plugged));
        if (circuit.amps().isEmpty()) {
            return new CircuitLine(circuit, plugged, design, Optional.empty(), List.of(), List.of());
        }
        double amps = circuit.amps().getAsDouble();
        Verdict verdict = CircuitRule.verdict(rule, amps, plugged);
        if (verdict == Verdict.OVER) {
            problems.add(new PrepProblem.CircuitOver(circuit.id(), circuit.name()));
        }
        return new CircuitLine(circuit, plugged, design, Optional.of(verdict),
                CircuitRule.reasons(rule, amps, plugged), List.of());
    }

    private static Plugged plugged(Appliance appliance, double watts, double volts) {
        return new Plugged(appliance.id(), appliance.name(), watts, watts / volts, appliance.onMinutes(),
                appliance.melter().isPresent());
    }

    private static void wanting(Circuit circuit, List<PrepProblem> problems) {
        if (circuit.volts().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.CIRCUIT_VOLTS, circuit.id(), circuit.name()));
        }
        if (circuit.amps().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.CIRCUIT_AMPS, circuit.id(), circuit.name()));
        }
        if (circuit.rule().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.CIRCUIT_RULE, circuit.id(), circuit.name()));
        }
    }

    private static List<Caution> cautions(Kit kit, List<MelterLine> melters, double promisedMinutes) {
        List<Caution> cautions = new ArrayList<>();
        for (MelterLine line : melters) {
            List<Appliance> as = kit.appliances().stream()
                    .filter(a -> a.melter().filter(line.melter().id()::equals).isPresent()).toList();
            if (as.isEmpty() && !kit.circuits().isEmpty()) {
                cautions.add(new Caution.PluggedInNowhere(line.melter().id(), line.melter().name()));
            }
            line.switchOnMinutesBefore().ifPresent(before -> as.stream()
                    .filter(a -> line.used() && a.onMinutes() < before + promisedMinutes)
                    .forEach(a -> cautions.add(new Caution.OnLonger(a.id(), a.name(), a.onMinutes(),
                            before + promisedMinutes))));
        }
        return cautions;
    }
}
