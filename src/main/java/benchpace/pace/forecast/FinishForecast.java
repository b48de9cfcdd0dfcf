package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.belief.StandardNormal;
import java.util.SplittableRandom;

/**
 * The moment the last candle is ready: in each draw the latest of pour plus cure over all seats that stay. The cure of
 * one class shares a factor (room, wax, vessel), each candle differs a little from it.
 */
public final class FinishForecast {
    private static final int NOBODY = -1;
    /** Two are ready at the same instant, as candles past their time are that may be tried now: neither is the last. */
    private static final int SEVERAL = -2;

    private final Posterior posterior;
    private final ClassTrack track;
    private final double now;
    private final double[] setMinutes;
    private final double logCureMinutes;

    public FinishForecast(Posterior posterior) {
        this.posterior = posterior;
        this.track = posterior.track();
        this.now = posterior.now();
        this.setMinutes = track.seats().stream().mapToDouble(this::setMinutes).toArray();
        this.logCureMinutes = Math.log(track.cureMinutes());
    }

    /**
     * @param draws how many
     * @param seed of the pours, as of {@link PourDraws}
     * @param cureSeed of the cures
     */
    public Forecast forecast(int draws, long seed, long cureSeed) {
        SplittableRandom random = new SplittableRandom(cureSeed);
        SplittableRandom rooms = new SplittableRandom(~cureSeed);
        int n = track.seats().size();
        double[] finish = new double[draws];
        int[] last = new int[n];
        WayDraws ways = new WayDraws(posterior, seed);
        Way way = ways.blank();
        World world = World.asItIs(posterior);
        boolean allPoured = posterior.allPoured();
        double[] pours = {};
        double[] firstPours = {};
        for (int b = 0; b < draws; b++) {
            if (b == 0 || !allPoured) {
                ways.draw(way);
                pours = world.pours(way);
                firstPours = b == 0 ? pours.clone() : firstPours;
            }
            double cure = StandardNormal.draw(random);
            double room = StandardNormal.draw(rooms);
            int latest = NOBODY;
            for (int i = 0; i < n; i++) {
                double z = StandardNormal.draw(random);
                double ready = ready(i, pours[i], cure, room, z);
                if (ready > Double.NEGATIVE_INFINITY && (latest == NOBODY || ready > finish[b])) {
                    latest = i;
                    finish[b] = ready;
                } else if (latest != NOBODY && ready == finish[b]) {
                    latest = SEVERAL;
                }
            }
            if (latest == NOBODY) {
                finish[b] = now;
            } else if (latest != SEVERAL) {
                last[latest]++;
            }
        }
        int driver = 0;
        for (int i = 1; i < n; i++) {
            driver = last[i] > last[driver] ? i : driver;
        }
        boolean any = n > 0 && last[driver] > 0;
        return new Forecast(FinishTimes.of(finish), any ? track.seats().get(driver).seat() : 0,
                any && firstPours[driver] <= now);
    }

    private double ready(int i, double pour, double classZ, double room, double z) {
        if (pour == Double.NEGATIVE_INFINITY) {
            return pour;
        }
        if (setMinutes[i] <= now) {
            return setMinutes[i];
        }
        SeatTrack seat = track.seats().get(i);
        if (seat.ready().isKnown() && pour <= now) {
            return Math.max(now, seat.ready().medianMinutes() + seat.ready().sharedSdMinutes() * room
                    + seat.ready().sdMinutes() * z);
        }
        return Math.max(now, pour + posterior.priors().cure().minutesOfLog(logCureMinutes, classZ, z));
    }

    /** A candle shared by two seats is set once either of them was judged. */
    private double setMinutes(SeatTrack seat) {
        double set = seat.setMinutes();
        for (SeatTrack other : track.seats()) {
            set = seat.sharesCandleWith(other) ? Math.min(set, other.setMinutes()) : set;
        }
        return set;
    }

    /** Quantile of sorted values, type 7 of Hyndman &amp; Fan (1996), "Sample quantiles in statistical packages". */
    public static double at(double[] sorted, double p) {
        double h = (sorted.length - 1) * p;
        int below = (int) Math.floor(h);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (h - below) * (sorted[above] - sorted[below]);
    }
}
