package benchpace.prep.circuit;

/** Why a circuit is judged as it is; the numbers of a sentence that {@code PrepWords} makes. All in amperes. */
public sealed interface CircuitReason {

    /** All of it is within the circuit, with something to spare. */
    record Within(double designAmps, double amps) implements CircuitReason { }

    /** All of it is within the circuit, but not by a tenth. */
    record NearlyAll(double designAmps, double amps) implements CircuitReason { }

    /** All of it together is too much. */
    record Together(double designAmps, double amps, double otherAmps, double continuousAmps)
            implements CircuitReason { }

    /** One appliance alone takes more than its limit. */
    record Alone(String name, double amps, double mostAmps, AloneLimit limit) implements CircuitReason { }

    /** What bounds one appliance. */
    enum AloneLimit {
        /** Four fifths of the circuit. */
        SHARE_OF_CIRCUIT,
        /** The fuse in its plug. */
        PLUG,
        /** Its plug, for longer than an hour. */
        PLUG_FOR_LONG
    }
}
