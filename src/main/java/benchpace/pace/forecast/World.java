package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.belief.OpeningHabit;
import java.util.HashMap;
import java.util.Map;

/**
 * The class as it is, or as it would be with one seat less or one seat helped. Puts the ways of its seats together:
 * led steps open once most of the table is through with the one before, and a station serves one seat after the other.
 */
final class World {
    private static final int NOBODY = -1;

    private final Posterior posterior;
    private final PaceStep[] steps;
    private final double[] opened;
    private final boolean[] counted;
    private final boolean[] awaited;
    private final int table;
    private final int helped;
    private final LatestDone latest;
    private final Map<Integer, TurnDraws> turns = new HashMap<>();
    private final double[] at;

    private World(Posterior posterior, int leftOut, int helped) {
        ClassTrack track = posterior.track();
        int seats = track.seats().size();
        this.posterior = posterior;
        this.helped = helped;
        this.steps = track.steps().subList(0, track.pourStep() + 1).toArray(PaceStep[]::new);
        this.opened = track.openedMinutes().stream().mapToDouble(Double::doubleValue).toArray();
        this.counted = new boolean[seats];
        this.awaited = new boolean[seats];
        int here = 0;
        for (int i = 0; i < seats; i++) {
            counted[i] = posterior.stays(i) && i != leftOut;
            awaited[i] = counted[i] && track.seats().get(i).arrivedMinutes() <= posterior.now();
            here += awaited[i] ? 1 : 0;
        }
        this.table = here;
        this.latest = new LatestDone(seats);
        this.at = new double[seats];
        for (int k = 0; k < steps.length; k++) {
            if (steps[k].stations().isPresent()) {
                turns.put(k, new TurnDraws(posterior, k, counted));
            }
        }
    }

    static World asItIs(Posterior posterior) {
        return new World(posterior, NOBODY, NOBODY);
    }

    /** @param seat index of the seat left out of account */
    static World without(Posterior posterior, int seat) {
        return new World(posterior, seat, NOBODY);
    }

    /** @param seat index of the seat that somebody walks to now */
    static World helping(Posterior posterior, int seat) {
        return new World(posterior, NOBODY, seat);
    }

    /**
     * When each seat pours, in minutes from the class's start; negative infinity for seats that have left. The array is
     * the same each time.
     */
    double[] pours(Way way) {
        System.arraycopy(way.from, 0, at, 0, at.length);
        if (helped != NOBODY) {
            at[helped] = way.fromIfHelped[helped];
        }
        double opening = 0;
        for (int k = 0; k < steps.length; k++) {
            opening = steps[k].led() ? opening(k, way, opening) : opening;
            double earliest = steps[k].led() ? opening : Double.NEGATIVE_INFINITY;
            if (turns.containsKey(k)) {
                waitFor(earliest, k, way);
                turns.get(k).take(way, at);
                work(Double.NEGATIVE_INFINITY, k, way);
            } else {
                work(earliest, k, way);
            }
        }
        for (int i = 0; i < at.length; i++) {
            at[i] = counted[i] ? at[i] : Double.NEGATIVE_INFINITY;
        }
        return at;
    }

    /** Nobody begins step k before {@code earliest}. */
    private void waitFor(double earliest, int k, Way way) {
        for (int i = 0; i < at.length; i++) {
            if (way.isToDo(i, k)) {
                at[i] = Math.max(at[i], earliest);
            }
        }
    }

    /** Those that still have to do step k do it, from {@code earliest} on. */
    private void work(double earliest, int k, Way way) {
        for (int i = 0; i < at.length; i++) {
            if (way.isToDo(i, k)) {
                at[i] = Math.max(at[i], earliest) + way.takes(i, k);
            }
        }
    }

    /** When a led step opens: at its recorded time, else once most of the table is through with the one before. */
    private double opening(int k, Way way, double before) {
        double now = posterior.now();
        if (opened[k] <= now) {
            return opened[k];
        }
        if (table == 0) {
            return Math.max(now, before);
        }
        latest.clear(OpeningHabit.missing(way.share, table));
        for (int i = 0; i < at.length; i++) {
            if (awaited[i]) {
                latest.add(way.isToDo(i, k) ? at[i] : 0);
            }
        }
        return Math.max(Math.max(now, before), latest.allButMissing()) + posterior.priors().openings().delayMinutes();
    }
}
