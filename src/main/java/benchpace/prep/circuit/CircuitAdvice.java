package benchpace.prep.circuit;

import java.util.OptionalDouble;

/** What would help a circuit, with what it comes to then. Facts only; {@code PrepWords} says them. */
public sealed interface CircuitAdvice {
    /** What the circuit itself is judged then. */
    Verdict verdict();

    /** Plug it in at another circuit of the venue. @param designAmps of this circuit then, {@code otherAmps} there */
    record Move(String appliance, String name, String otherCircuit, double designAmps, Verdict verdict,
                double otherAmps, Verdict otherVerdict) implements CircuitAdvice { }

    /** Never have it on while a melter of this circuit is. @param designAmps the larger of both states */
    record KeepOff(String appliance, String name, double designAmps, Verdict verdict) implements CircuitAdvice { }

    /**
     * A smaller melter, or a lower setting.
     *
     * @param watts       the most that fits
     * @param meltMinutes that it then takes for the first fill, if that is known
     */
    record SmallerMelter(String appliance, String name, double watts, double designAmps, Verdict verdict,
                         OptionalDouble meltMinutes) implements CircuitAdvice { }
}
