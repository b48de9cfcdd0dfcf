package benchpace.cure.room;

import benchpace.cure.CuringCandle;
import benchpace.cure.solver.CureMilestones;

/**
 * What can be said about one candle's cure: ranges in minutes from the pour, from the room's posterior and the model's
 * own uncertainty. Ready means skin formed and the room's ready fraction solid; it is a level, careful carry at best,
 * and the instructor's hand test decides.
 *
 * @param skin the top has a skin
 * @param ready skin formed and the room's ready fraction solid
 * @param firm 95 per cent solid
 */
public record CureOutlook(MinuteRange skin, MinuteRange ready, MinuteRange firm) {
    /** The outlook of one candle in a room. */
    public static CureOutlook of(CuringCandle candle, RoomPosterior room, TrajectoryCache cache) {
        LossTrajectories t = cache.of(candle.coolingCase());
        double[][] weight = room.ofCandle(candle);
        double[] anyFraction = new double[RoomPosterior.LOSSES];
        double[] skin = new double[RoomPosterior.LOSSES];
        double[] firm = new double[RoomPosterior.LOSSES];
        double[][] ready = new double[RoomPosterior.LOSSES][LossTrajectories.FRACTIONS];
        for (int i = 0; i < RoomPosterior.LOSSES; i++) {
            double loss = RoomPosterior.logLoss(i);
            skin[i] = t.skinMinutes(loss);
            firm[i] = t.firmMinutes(loss);
            for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                anyFraction[i] += weight[i][k];
                ready[i][k] = t.readyMinutes(loss, k);
            }
        }
        return new CureOutlook(range(new double[][] {skin}, new double[][] {anyFraction}), range(ready, weight),
                range(new double[][] {firm}, new double[][] {anyFraction}));
    }

    private static MinuteRange range(double[][] minutes, double[][] weight) {
        double p10 = quantile(minutes, weight, 0.1);
        double p50 = Math.max(quantile(minutes, weight, 0.5), p10);
        return new MinuteRange(p10, p50, Math.max(quantile(minutes, weight, 0.9), p50));
    }

    /** The time before which a share of the weight lies, to a hundredth of a minute. */
    private static double quantile(double[][] minutes, double[][] weight, double share) {
        double low = 0;
        double high = CureMilestones.HORIZON_MINUTES;
        if (!reaches(share, minutes, weight, high)) {
            return Double.POSITIVE_INFINITY;
        }
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (reaches(share, minutes, weight, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** Whether such a share of the weight is at or below a limit. No weight is negative: what is reached stays so. */
    private static boolean reaches(double share, double[][] minutes, double[][] weight, double limit) {
        double sum = 0;
        for (int i = 0; i < minutes.length && sum < share; i++) {
            double[] m = minutes[i];
            double[] w = weight[i];
            for (int k = 0; k < m.length; k++) {
                sum += m[k] <= limit ? w[k] : 0;
            }
        }
        return sum >= share;
    }
}
