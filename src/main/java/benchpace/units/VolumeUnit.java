package benchpace.units;

/**
 * Units of volume. Base: the millilitre. The US gallon is 231 cubic inches, its fluid ounce a 128th (NIST Special
 * Publication 811, appendix B.8, and Handbook 44, appendix C); the imperial gallon is 4.54609 l, its fluid ounce a
 * 160th (UK Units of Measurement Regulations 1995); all exact, all from memory. The two fluid ounces differ by 4 %.
 */
public enum VolumeUnit implements Unit {
    MILLILITRE("ml", 1), CENTILITRE("cl", 10), LITRE("l", 1000),
    US_FLUID_OUNCE("US fl oz", 29.5735295625), IMPERIAL_FLUID_OUNCE("imp fl oz", 28.4130625);

    private final String symbol;
    private final double millilitres;

    VolumeUnit(String symbol, double millilitres) {
        this.symbol = symbol;
        this.millilitres = millilitres;
    }

    @Override public String symbol() {
        return symbol;
    }

    /** Millilitres. */
    @Override public double toBase(double value) {
        return value * millilitres;
    }

    @Override public double fromBase(double base) {
        return base / millilitres;
    }
}
