package benchpace.pace;

/**
 * What is believed of a step's usual time before the class begins.
 *
 * @param meanLogShift log of the usual time over the plan's; 0 when the plan is all that is known
 * @param variance how sure: variance of that log in the next class
 * @param noiseVariance variance of one guest's log time around it; NaN for the general one
 */
public record StepPrior(double meanLogShift, double variance, double noiseVariance) {
    public StepPrior {
        if (!Double.isFinite(meanLogShift) || !(variance > 0)) {
            throw new IllegalArgumentException("a shift of " + meanLogShift + ", a variance of " + variance);
        }
    }
}
