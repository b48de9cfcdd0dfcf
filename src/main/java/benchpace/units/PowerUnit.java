package benchpace.units;

/**
 * Units of power, as rating plates give them. Base: the watt. One British thermal unit (International Table) is
 * 1055.05585262 J exactly (NIST Special Publication 811, appendix B.8, which prints 1.055 056 E+03; the long form is
 * from memory). Another, the thermochemical one, is 0.07 % smaller; plates mean the first.
 */
public enum PowerUnit implements Unit {
    WATT("W", 1), KILOWATT("kW", 1000), BTU_PER_HOUR("BTU/h", PowerUnit.JOULES_PER_BTU / 3600);

    /** Of an International Table BTU. */
    static final double JOULES_PER_BTU = 1055.05585262;

    private final String symbol;
    private final double watts;

    PowerUnit(String symbol, double watts) {
        this.symbol = symbol;
        this.watts = watts;
    }

    @Override public String symbol() {
        return symbol;
    }

    /** Watts. */
    @Override public double toBase(double value) {
        return value * watts;
    }

    @Override public double fromBase(double base) {
        return base / watts;
    }
}
