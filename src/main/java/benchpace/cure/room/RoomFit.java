package benchpace.cure.room;

/**
 * What a room has taught about its candles, in five numbers that can be stored and shown. The loss multiplier is
 * lognormal, the ready fraction normal.
 *
 * @param logLossMean mean of ln(loss multiplier)
 * @param logLossSd its standard deviation, above 0
 * @param readyMean mean of the solid fraction at which the instructor judges a candle ready, 0 to 1
 * @param readySd its standard deviation, above 0
 * @param observations how many observations it rests on
 */
public record RoomFit(double logLossMean, double logLossSd, double readyMean, double readySd, int observations) {
    private static final double Z90 = 1.2815515655446004;
    /** From one class to the next a room's draughts and tables differ by about this much. */
    private static final double CLASS_TO_CLASS_LOG_LOSS_SD = 0.08;
    private static final double CLASS_TO_CLASS_READY_SD = 0.03;

    public RoomFit {
        if (!Double.isFinite(logLossMean) || !(logLossSd > 0) || !(readyMean >= 0 && readyMean <= 1) || !(readySd > 0)
                || observations < 0) {
            throw new IllegalArgumentException("no fit: " + logLossMean + ", " + logLossSd + ", " + readyMean + ", "
                    + readySd + ", " + observations);
        }
    }

    /** A room that has taught nothing: loss multiplier of median 1 and sigma 0.25, ready at half solid. */
    public static RoomFit untaught() {
        return new RoomFit(0, 0.25, 0.5, 0.12, 0);
    }

    /** What the next class in the same room starts from: the same, a little less certain, never less than untaught. */
    public RoomFit forNextClass() {
        RoomFit untaught = untaught();
        return new RoomFit(logLossMean, Math.min(Math.hypot(logLossSd, CLASS_TO_CLASS_LOG_LOSS_SD), untaught.logLossSd),
                readyMean, Math.min(Math.hypot(readySd, CLASS_TO_CLASS_READY_SD), untaught.readySd), observations);
    }

    /** Median of the loss multiplier; above 1 the room cools faster than computed. */
    public double lossMedian() {
        return Math.exp(logLossMean);
    }

    /** The 10 per cent quantile of the loss multiplier. */
    public double lossP10() {
        return Math.exp(logLossMean - Z90 * logLossSd);
    }

    /** The 90 per cent quantile of the loss multiplier. */
    public double lossP90() {
        return Math.exp(logLossMean + Z90 * logLossSd);
    }

    /** The 10 per cent quantile of the ready fraction. */
    public double readyP10() {
        return Math.max(readyMean - Z90 * readySd, 0);
    }

    /** The 90 per cent quantile of the ready fraction. */
    public double readyP90() {
        return Math.min(readyMean + Z90 * readySd, 1);
    }

    /** What changed from an earlier fit to this one. */
    public FitChange since(RoomFit earlier) {
        return new FitChange(lossMedian() / earlier.lossMedian(), readyMean - earlier.readyMean,
                logLossSd / earlier.logLossSd, observations - earlier.observations);
    }
}
