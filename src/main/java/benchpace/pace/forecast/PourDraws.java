package benchpace.pace.forecast;

/**
 * Many possible ways the rest of the class may go until the last pour, each drawn from what is believed now: the ways
 * of the seats, and the openings of led steps, which wait for most of the table. The same seed gives the same draws, so
 * the same class gives the same answer; and a world that differs in one seat is the same draws put together anew.
 */
public final class PourDraws {
    /** Somebody who walks over needs about this long to get a stuck seat going; from judgement. */
    public static final double HELPED_MINUTES = 1;

    private final Posterior posterior;
    private final Way[] ways;
    private final double meanLastPour;

    /** @param draws how many */
    public PourDraws(Posterior posterior, int draws, long seed) {
        this.posterior = posterior;
        this.ways = new Way[draws];
        WayDraws drawn = new WayDraws(posterior, seed);
        for (int b = 0; b < draws; b++) {
            ways[b] = drawn.blank();
            drawn.draw(ways[b]);
        }
        this.meanLastPour = meanLastPour(World.asItIs(posterior));
    }

    /** Mean over the draws of the last pour, in minutes from the class's start; now when nobody pours. */
    public double meanLastPour() {
        return meanLastPour;
    }

    /** The same were a seat not there. @param seat its index */
    public double meanLastPourWithout(int seat) {
        return meanLastPour(World.without(posterior, seat));
    }

    /** The same if somebody walks to a seat now. @param seat its index */
    public double meanLastPourHelping(int seat) {
        return meanLastPour(World.helping(posterior, seat));
    }

    /** When each seat pours in draw b, minutes from the class's start; negative infinity for those that have left. */
    double[] pours(int b) {
        return World.asItIs(posterior).pours(ways[b]);
    }

    private double meanLastPour(World world) {
        double sum = 0;
        for (Way way : ways) {
            double last = posterior.now();
            for (double pour : world.pours(way)) {
                last = Math.max(last, pour);
            }
            sum += last / ways.length;
        }
        return sum;
    }
}
