package benchpace.units;

/**
 * Scales of temperature. Base: the degree Celsius. F = 1.8 C + 32 exactly (NIST Special Publication 811, appendix B.8;
 * from memory). A difference of two temperatures is another thing, and has no 32 in it.
 */
public enum TemperatureUnit implements Unit {
    CELSIUS("°C", 1, 0), FAHRENHEIT("°F", 1.8, 32);

    private final String symbol;
    private final double degreesPerKelvin;
    private final double zeroCelsius;

    TemperatureUnit(String symbol, double degreesPerKelvin, double zeroCelsius) {
        this.symbol = symbol;
        this.degreesPerKelvin = degreesPerKelvin;
        this.zeroCelsius = zeroCelsius;
    }

    @Override public String symbol() {
        return symbol;
    }

    /** Degrees Celsius. */
    @Override public double toBase(double value) {
        return (value - zeroCelsius) / degreesPerKelvin;
    }

    @Override public double fromBase(double base) {
        return base * degreesPerKelvin + zeroCelsius;
    }

    /** A difference in this scale's degrees, in kelvin: 5 °F are 2.778 K. */
    public double differenceToKelvin(double degrees) {
        return degrees / degreesPerKelvin;
    }

    /** A difference in kelvin, in this scale's degrees. */
    public double differenceFromKelvin(double kelvin) {
        return kelvin * degreesPerKelvin;
    }
}
