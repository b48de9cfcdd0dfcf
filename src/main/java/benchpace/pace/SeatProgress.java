package benchpace.pace;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a seat stands at a moment, and what its taps say about the steps behind it.
 *
 * @param standing what the seat is doing
 * @param step index of its present worked step; the number of steps when there is none left before the pour's end
 * @param startMinutes when it could start that step, as far as the taps tell: its turn, where it had to wait for one;
 *        while it waits, when it came
 * @param startsByTap whether that moment is its own last tap (and so late) rather than an opening or an arrival
 * @param workedMinutes time since the start, pauses taken out
 * @param done the worked steps behind it, in order
 */
public record SeatProgress(Standing standing, int step, double startMinutes, boolean startsByTap, double workedMinutes,
                    List<Done> done) {
    public enum Standing {
        AWAY, PAUSED,
        /** Its step is not open yet. */
        WAITING,
        /** It has come to its step and waits for its turn at what serves it. */
        QUEUED,
        WORKING, POURED
    }

    /**
     * A finished worked step.
     *
     * @param step its index
     * @param startMinutes the moment it could start
     * @param minutes from the moment it could start to its tap, pauses taken out
     * @param startsByTap whether the start was a tap as well
     * @param tapMinutes when it was ticked
     * @param weight 1; half for steps filled in by a jump, or begun when a turn came that nobody recorded; 0 for steps
     *        left out
     */
    public record Done(int step, double startMinutes, double minutes, boolean startsByTap, double tapMinutes,
                double weight) { }

    /** @param seat one of the track's */
    public static SeatProgress of(ClassTrack track, SeatTrack seat, double now) {
        return new Walk(track, seat, now, StationWaits.of(track, now).of(seat.seat())).walk();
    }

    /** Of every seat, in the track's order. */
    public static List<SeatProgress> all(ClassTrack track, double now) {
        return all(track, now, StationWaits.of(track, now));
    }

    static List<SeatProgress> all(ClassTrack track, double now, StationWaits waits) {
        return track.seats().stream().map(s -> new Walk(track, s, now, waits.of(s.seat())).walk()).toList();
    }

    /** One seat's way through the steps up to the pour. */
    private static final class Walk {
        private final ClassTrack track;
        private final SeatTrack seat;
        private final double now;
        private final List<Done> done = new ArrayList<>();
        private double from;
        private final double sharedPour;
        private final double[] waits;
        private boolean byTap;

        /** @param waits minutes waited for a turn at each step */
        Walk(ClassTrack track, SeatTrack seat, double now, double[] waits) {
            this.track = track;
            this.seat = seat;
            this.now = now;
            this.waits = waits;
            this.from = seat.arrivedMinutes();
            this.sharedPour = sharedPour();
        }

        SeatProgress walk() {
            int pour = track.pourStep();
            int k = 0;
            while (k <= pour) {
                if (!track.steps().get(k).kind().isWorked()) {
                    passTalk(k, finishedAt(k));
                    k++;
                    continue;
                }
                double finished = finishedAt(k);
                if (finished == SeatTrack.NOT_YET) {
                    waitForOpening(k);
                    return at(k);
                }
                int last = k;
                while (last < pour && finishedAt(last + 1) == finished) {
                    last++;
                }
                record(k, last, finished);
                k = last + 1;
            }
            return new SeatProgress(here(SeatProgress.Standing.POURED), track.steps().size(), from, byTap, 0, done);
        }

        /** A talk holds a seat until its time box is over, or until it is ticked or the next led step opens. */
        private void passTalk(int k, double finished) {
            waitForOpening(k);
            double over = Math.min(finished, from + track.steps().get(k).planMinutes());
            for (int next = k + 1; next < track.steps().size(); next++) {
                if (track.steps().get(next).led()) {
                    over = Math.min(over, Math.max(from, track.openedMinutes().get(next)));
                    break;
                }
            }
            if (over > from) {
                from = over;
                byTap = false;
            }
        }

        private void waitForOpening(int k) {
            double opened = track.steps().get(k).led() ? track.openedMinutes().get(k) : 0;
            if (opened > from) {
                from = opened;
                byTap = false;
            }
        }

        /** What was waited for turns at the steps first..last is no time at them. */
        private boolean waitForTurn(int first, int last) {
            double waited = 0;
            for (int k = first; k <= last; k++) {
                waited += waits[k];
            }
            if (waited > 0) {
                from += waited;
                byTap = false;
            }
            return waited > 0;
        }

        /** Steps first..last, ticked by one tap: they share the time by plan. */
        private void record(int first, int last, double finished) {
            boolean several = last > first;
            double total = 0;
            for (int k = first; k <= last; k++) {
                total += track.steps().get(k).kind().isWorked() ? track.steps().get(k).planMinutes() : 0;
            }
            waitForOpening(first);
            boolean waited = waitForTurn(first, last);
            double minutes = Math.max(0, finished - from - seat.pausedWithin(from, finished));
            double share = 0;
            for (int k = first; k <= last; k++) {
                PaceStep step = track.steps().get(k);
                if (step.kind().isWorked()) {
                    double weight = isSkipped(k) ? 0 : several || waited ? 0.5 : 1;
                    double start = Math.min(from, finished) + Math.max(0, finished - from) * share;
                    done.add(new Done(k, start, minutes * step.planMinutes() / total, byTap, finished, weight));
                    share += step.planMinutes() / total;
                }
            }
            from = Math.max(from, finished);
            byTap = true;
        }

        private boolean isSkipped(int k) {
            return seat.taps().stream().anyMatch(t -> t.step() == k && t.skipped());
        }

        /** One candle is poured once: when a seat it is shared with was ticked for the pour, or for anything later. */
        private double sharedPour() {
            double first = SeatTrack.NOT_YET;
            for (SeatTrack other : track.seats()) {
                if (other != seat && other.sharesCandleWith(seat)) {
                    for (Tap tap : other.taps()) {
                        first = tap.step() >= track.pourStep() ? Math.min(first, tap.atMinutes()) : first;
                    }
                }
            }
            return first;
        }

        /** When step k was finished: its own first tap, or the first tap of any later step if that came before. */
        private double finishedAt(int k) {
            double first = sharedPour;
            for (Tap tap : seat.taps()) {
                if (tap.step() >= k && tap.atMinutes() < first) {
                    first = tap.atMinutes();
                }
            }
            return first;
        }

        private SeatProgress at(int k) {
            if (now >= from && waits[k] == SeatTrack.NOT_YET) {
                return new SeatProgress(here(Standing.QUEUED), k, from, byTap, 0, done);
            }
            if (now >= from) {
                waitForTurn(k, k);
            }
            double worked = now <= from ? 0 : now - from - seat.pausedWithin(from, now);
            Standing standing = now < from ? Standing.WAITING : Standing.WORKING;
            return new SeatProgress(here(standing), k, from, byTap, Math.max(0, worked), done);
        }

        private Standing here(Standing standing) {
            if (!seat.isHere(now)) {
                return Standing.AWAY;
            }
            return standing != Standing.POURED && seat.isPaused(now) ? Standing.PAUSED : standing;
        }
    }
}
