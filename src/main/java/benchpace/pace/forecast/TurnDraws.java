package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Turns at a step's stations in one draw of the rest of the class. Seats that have a station now keep it for their
 * share of the time that was drawn for them; those that wait or come later follow in the order in which they came.
 */
final class TurnDraws {
    private final ClassTrack track;
    private final List<SeatProgress> seats;
    private final boolean[] counted;
    private final double now;

    /** @param counted which seats are there to be served */
    TurnDraws(ClassTrack track, List<SeatProgress> seats, boolean[] counted, double now) {
        this.track = track;
        this.seats = seats;
        this.counted = counted;
        this.now = now;
    }

    /** Whether the seat's step has stations and it has not had its turn, even if it is away just now. */
    boolean isStillToCome(int i) {
        SeatProgress progress = seats.get(i);
        return progress.step() <= track.pourStep() && track.steps().get(progress.step()).stations().isPresent()
                && progress.workedMinutes() == 0;
    }

    /**
     * Moves those that still have to do step k to where their turn begins.
     *
     * @param at when each came to its next step; when it is through with step k, of those that are at it now
     * @param step the next step of each
     * @param takes how long each will take over step k from its turn on
     */
    void at(int k, double[] at, int[] step, double[] takes) {
        PaceStep served = track.steps().get(k);
        PaceStations stations = served.stations().orElseThrow();
        double share = stations.eachMinutes() / served.planMinutes();
        StationQueue queue = new StationQueue(stations.atOnce());
        keptNow(k, at, share).stream().limit(stations.atOnce())
                .forEach(until -> queue.turn(now, until - now));
        List<Integer> coming = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            if (step[i] == k && counted[i]) {
                coming.add(i);
            }
        }
        coming.sort(Comparator.comparingDouble(i -> at[i]));
        for (int i : coming) {
            boolean waits = seats.get(i).standing() == SeatProgress.Standing.QUEUED && seats.get(i).step() == k;
            at[i] = queue.turn(waits ? Math.max(now, at[i]) : at[i], share * takes[i]);
        }
    }

    /** Until when the stations of step k are kept by those at it now, the latest first. */
    private List<Double> keptNow(int k, double[] at, double share) {
        List<Double> kept = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            SeatProgress progress = seats.get(i);
            if (progress.standing() == SeatProgress.Standing.WORKING && progress.step() == k && counted[i]) {
                double until = progress.startMinutes() + share * (at[i] - progress.startMinutes());
                if (until > now) {
                    kept.add(until);
                }
            }
        }
        kept.sort(Comparator.reverseOrder());
        return kept;
    }
}
