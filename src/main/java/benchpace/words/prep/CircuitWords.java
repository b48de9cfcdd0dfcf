package benchpace.words.prep;

import benchpace.plan.kit.Circuit;
import benchpace.prep.circuit.CircuitAdvice;
import benchpace.prep.circuit.CircuitLine;
import benchpace.prep.circuit.CircuitReason;
import benchpace.prep.circuit.Verdict;
import benchpace.words.PrepFigures;
import java.util.List;

/** Says what a circuit carries, by which rule it is judged and where that rule is from, and what would help. */
public final class CircuitWords {
    /** Stand on every sheet, whatever the sums say. */
    public static final List<String> ALWAYS = List.of(
            "Ask the venue which sockets share a breaker, and what it allows. A licensed electrician decides, not this "
                    + "sum.",
            "Melters go straight into the wall: no power strip, no extension lead. (Power strips are for small loads: "
                    + "UL 1363 as a state's safety office explains it.)",
            "Never plug an extension lead into another; unwind drums fully; some leads carry only 10 A. (British fire "
                    + "services' advice; 29 CFR 1910.303(b)(2) says the same of power strips.)",
            "Where water is near, use sockets with a residual-current breaker. (GFCI, NEC 210.8; RCD of 30 mA; from "
                    + "memory.)");

    private CircuitWords() { }

    /** "fits", "close", "over". */
    public static String verdict(Verdict verdict) {
        return switch (verdict) {
            case FITS -> "fits";
            case CLOSE -> "close";
            case OVER -> "over";
        };
    }

    /** "120 V, 20 A, North American rule"; what is not known is left out. */
    public static String circuit(Circuit circuit) {
        return (circuit.volts().isPresent() ? Amounts.number(circuit.volts().getAsDouble()) + " V, " : "")
                + (circuit.amps().isPresent() ? PrepFigures.amps(circuit.amps().getAsDouble()) + ", " : "")
                + circuit.rule().map(CircuitWords::rule).orElse("no rule named");
    }

    public static String rule(Circuit.Rule rule) {
        return switch (rule) {
            case NORTH_AMERICA -> "North American rule";
            case UK_13 -> "British 13 A plugs";
            case SCHUKO_16 -> "Schuko 16 A plugs";
            case PLAIN -> "plain sum";
        };
    }

    /** "The kettle: 1800 W, 15 A, on for 10 min", a line for each; that it is continuous only where that counts. */
    public static List<String> plugged(CircuitLine line) {
        boolean counts = line.circuit().rule().filter(Circuit.Rule.NORTH_AMERICA::equals).isPresent();
        return line.plugged().stream().map(p -> p.name() + ": " + Amounts.watts(p.watts()) + ", "
                + PrepFigures.amps(p.amps()) + ", on for " + PrepFigures.minutes(p.onMinutes())
                + (counts && p.continuous() ? " (counts as continuous)" : "")).toList();
    }

    /** Why it is judged so, a sentence each; empty if it could not be judged. */
    public static List<String> reasons(CircuitLine line) {
        return line.reasons().stream().map(reason -> reason(reason, line)).toList();
    }

    private static String reason(CircuitReason reason, CircuitLine line) {
        Circuit.Rule rule = line.circuit().rule().orElseThrow();
        if (reason instanceof CircuitReason.Within r) {
            return "It counts as " + PrepFigures.amps(r.designAmps()) + " of " + PrepFigures.amps(r.amps()) + "."
                    + source(rule);
        } else if (reason instanceof CircuitReason.NearlyAll r) {
            return "It counts as " + PrepFigures.amps(r.designAmps()) + " of " + PrepFigures.amps(r.amps())
                    + ": nothing else may be plugged in here." + source(rule);
        } else if (reason instanceof CircuitReason.Together r) {
            return together(r, rule);
        } else if (reason instanceof CircuitReason.Alone r) {
            return alone(r, rule);
        }
        throw new IllegalArgumentException("no words for " + reason);
    }

    private static String together(CircuitReason.Together r, Circuit.Rule rule) {
        String sum = rule == Circuit.Rule.NORTH_AMERICA && r.continuousAmps() > 0
                ? ": " + PrepFigures.amps(r.otherAmps()) + " and 1.25 times the " + PrepFigures.amps(r.continuousAmps())
                        + " that stay on for three hours or more"
                : "";
        return "It counts as " + PrepFigures.amps(r.designAmps()) + ", and the circuit "
                + "has " + PrepFigures.amps(r.amps())
                + sum + "." + source(rule);
    }

    private static String alone(CircuitReason.Alone r, Circuit.Rule rule) {
        String alone = r.name() + " alone takes " + PrepFigures.amps(r.amps()) + ", and at most "
                + PrepFigures.amps(r.mostAmps());
        return switch (r.limit()) {
            case SHARE_OF_CIRCUIT -> alone + " may be one thing with a plug, four fifths of the circuit. (NEC "
                    + "210.23(A)(1), from memory.)";
            case PLUG -> alone + (rule == Circuit.Rule.UK_13 ? " go through the fuse in a plug. (BS 1363, as an "
                    + "electricians' page has it.)" : " go through one plug. (DIN 49440, as a trade journal has it.)");
            case PLUG_FOR_LONG -> alone + " go through one plug for longer than an hour: it is tested for an hour "
                    + "and not meant for continuous load. (German trade journals.)";
        };
    }

    private static String source(Circuit.Rule rule) {
        return switch (rule) {
            case NORTH_AMERICA -> " (NEC 210.19(A)(1) and 210.20(A): what is on for three hours or more counts 1.25 "
                    + "times; read second hand.)";
            case UK_13 -> " (The sum of all plugs; BS 1363 for each.)";
            case SCHUKO_16 -> " (The sum of all plugs; trade journals for each.)";
            case PLAIN -> " (The plain sum; no region's rule.)";
        };
    }

    /** What would help, each worked out anew; empty if nothing is over. */
    public static List<String> advice(CircuitLine line) {
        if (line.verdict().filter(v -> v == Verdict.OVER).isEmpty()) {
            return List.of();
        }
        return line.advice().isEmpty() ? List.of("No single change of this plan brings it within its rule: plug in "
                + "less, or ask the venue for another circuit.")
                : line.advice().stream().map(CircuitWords::advice).toList();
    }

    private static String advice(CircuitAdvice advice) {
        if (advice instanceof CircuitAdvice.Move a) {
            return a.name() + " at \"" + a.otherCircuit() + "\" instead: " + amounts(a.designAmps(), a.verdict())
                    + " here, " + amounts(a.otherAmps(), a.otherVerdict()) + " there.";
        } else if (advice instanceof CircuitAdvice.KeepOff a) {
            return a.name() + " never on while a melter here is: " + amounts(a.designAmps(), a.verdict()) + ".";
        } else if (advice instanceof CircuitAdvice.SmallerMelter a) {
            return a.name() + " of at most " + Amounts.watts(a.watts()) + ": " + amounts(a.designAmps(), a.verdict())
                    + (a.meltMinutes().isPresent() ? "; the first fill then takes "
                            + PrepFigures.minutes(a.meltMinutes().getAsDouble()) : "") + ".";
        }
        throw new IllegalArgumentException("no words for " + advice);
    }

    private static String amounts(double amps, Verdict verdict) {
        return PrepFigures.amps(amps) + ", " + verdict(verdict);
    }
}
