package benchpace.prep;

/** Figures that are asked for when a plan does not say them; none is ever guessed. */
public enum Figure {
    /** What the wax maker's limit is counted on. */
    LOAD_CONVENTION(Part.LOAD),
    WAX_MAKER_LIMIT(Part.LOAD),
    CERTIFICATE_LIMIT(Part.LOAD),
    MELTER_CAPACITY(Part.MELTER),
    MELTER_WATTS(Part.MELTER),
    MELTER_EFFICIENCY(Part.MELTER),
    APPLIANCE_WATTS(Part.CIRCUIT),
    /** Which of the venue's circuits an appliance is plugged into. */
    APPLIANCE_CIRCUIT(Part.CIRCUIT),
    CIRCUIT_VOLTS(Part.CIRCUIT),
    CIRCUIT_AMPS(Part.CIRCUIT),
    CIRCUIT_RULE(Part.CIRCUIT);

    private final Part part;

    Figure(Part part) {
        this.part = part;
    }

    /** What cannot be worked out without it. */
    public Part part() {
        return part;
    }
}
