package benchpace.units;

/**
 * Units of mass. Base: the gram. The pound avoirdupois is 0.45359237 kg exactly by the international agreement of 1959,
 * the ounce a sixteenth of it (NIST Special Publication 811, 2008, appendix B.8; from memory).
 */
public enum MassUnit implements Unit {
    GRAM("g", 1), KILOGRAM("kg", 1000), OUNCE("oz", 28.349523125), POUND("lb", 453.59237);

    private final String symbol;
    private final double grams;

    MassUnit(String symbol, double grams) {
        this.symbol = symbol;
        this.grams = grams;
    }

    @Override public String symbol() {
        return symbol;
    }

    /** Grams. */
    @Override public double toBase(double value) {
        return value * grams;
    }

    @Override public double fromBase(double base) {
        return base / grams;
    }
}
