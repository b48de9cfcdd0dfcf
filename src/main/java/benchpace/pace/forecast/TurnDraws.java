package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;

/**
 * Turns at a step's stations in one draw of the rest of the class. Seats that have a station now keep it for their
 * share of the time that was drawn for them; those that wait or come later follow in the order in which they came.
 */
final class TurnDraws {
    private final Posterior posterior;
    private final int k;
    private final double share;
    private final boolean[] counted;
    private final StationQueue queue;

    // of one draw
    private final int[] coming;
    private final double[] kept;

    /**
     * @param k       index of a step that has stations
     * @param counted which seats are there to be served
     */
    TurnDraws(Posterior posterior, int k, boolean[] counted) {
        PaceStep step = posterior.track().steps().get(k);
        PaceStations stations = step.stations().orElseThrow();
        this.posterior = posterior;
        this.k = k;
        this.share = stations.eachMinutes() / step.planMinutes();
        this.counted = counted;
        this.queue = new StationQueue(stations.atOnce());
        this.coming = new int[counted.length];
        this.kept = new double[counted.length];
    }

    /** Whether a seat's step has stations and it has not had its turn, even if it is away just now. */
    static boolean isStillToCome(ClassTrack track, SeatProgress progress) {
        return progress.step() <= track.pourStep() && track.steps().get(progress.step()).stations().isPresent()
                && progress.workedMinutes() == 0;
    }

    /**
     * Moves those that still have to do the step to where their turn begins.
     *
     * @param at when each came to its next step; when it is through with this one, of those that are at it now
     */
    void take(Way way, double[] at) {
        queue.clear();
        keepStations(at);
        int count = order(way, at);
        for (int j = 0; j < count; j++) {
            int i = coming[j];
            boolean waits = stands(i, SeatProgress.Standing.QUEUED);
            at[i] = queue.turn(waits ? Math.max(posterior.now(), at[i]) : at[i], share * way.takes(i, k));
        }
    }

    private boolean stands(int i, SeatProgress.Standing standing) {
        SeatProgress progress = posterior.seats().get(i);
        return progress.standing() == standing && progress.step() == k;
    }

    /** Puts those that come in the order in which they do. @return how many */
    private int order(Way way, double[] at) {
        int count = 0;
        for (int i = 0; i < at.length; i++) {
            if (way.isToDo(i, k) && counted[i]) {
                int j = count++;
                while (j > 0 && Double.compare(at[coming[j - 1]], at[i]) > 0) {
                    coming[j] = coming[j - 1];
                    j--;
                }
                coming[j] = i;
            }
        }
        return count;
    }

    /** Gives the stations to those that have them now: no more than there are, those that keep them longest. */
    private void keepStations(double[] at) {
        int count = 0;
        for (int i = 0; i < at.length; i++) {
            if (counted[i] && stands(i, SeatProgress.Standing.WORKING)) {
                double start = posterior.seats().get(i).startMinutes();
                double until = start + share * (at[i] - start);
                if (until > posterior.now()) {
                    int j = count++;
                    while (j > 0 && kept[j - 1] < until) {
                        kept[j] = kept[j - 1];
                        j--;
                    }
                    kept[j] = until;
                }
            }
        }
        for (int j = 0; j < Math.min(count, queue.stations()); j++) {
            queue.turn(posterior.now(), kept[j] - posterior.now());
        }
    }
}
