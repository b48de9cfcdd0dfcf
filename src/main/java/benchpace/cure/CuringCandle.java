package benchpace.cure;

/**
 * A candle that was poured.
 *
 * @param id names this pour; a candle poured again is another one
 * @param coolingCase its case with the computed losses, loss multiplier 1
 * @param calibratedWax whether timed candles have confirmed the wax's numbers
 */
public record CuringCandle(String id, CoolingCase coolingCase, boolean calibratedWax) {
    /** The model's own standard deviation in ln(loss), candle to candle, for a calibrated wax. */
    private static final double OWN_SD = 0.08;
    /** The same for a wax never calibrated. */
    public static final double OWN_SD_UNCALIBRATED = 0.12;

    /** The model's own standard deviation for this candle, in ln(loss). */
    public double ownSd() {
        return calibratedWax ? OWN_SD : OWN_SD_UNCALIBRATED;
    }
}
