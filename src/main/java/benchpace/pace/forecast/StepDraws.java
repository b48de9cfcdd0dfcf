package benchpace.pace.forecast;

import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.StandardNormal;
import java.util.SplittableRandom;

/** How long a seat may take over a step, drawn from what is believed of it: its work, and a stall to come. */
public final class StepDraws {
    private StepDraws() { }

    /**
     * Minutes of work.
     *
     * @param meanLog mean of the log of its minutes: plan, class, step and guest
     * @param sdLog   standard deviation of one time around it
     */
    public static double work(double meanLog, double sdLog, SplittableRandom random) {
        return Math.exp(meanLog + sdLog * StandardNormal.draw(random));
    }

    /** Minutes of standstill: mostly none, else until it is over or somebody comes by. */
    public static double stall(PacePriors.Stalls stalls, SplittableRandom random) {
        double u = random.nextDouble();
        double seen = random.nextDouble();
        if (u >= stalls.odds()) {
            return 0;
        }
        return Math.min(stalls.lengths().lengthBeyond(0, u / stalls.odds()), stalls.seenAfter(seen));
    }
}
