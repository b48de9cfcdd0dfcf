package benchpace.pace.engine;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatProgress;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningEvidence;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import benchpace.pace.belief.TapHabits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Weighs what explains the missing ticks of a table: of each seat by itself, and then together, for what the other
 * seats' ticks tell of the person with the tablet, and openings of who is done.
 */
final class TableOdds {
    private static final int ROUNDS = 3;
    private static final double CLOSED_LOOK_MINUTES = 1.3;
    private static final double OPENED_LOOK_MINUTES = 0.3;

    private final ClassTrack track;
    private final List<SeatProgress> seats;
    private final ClassTempo tempo;
    private final TapHabits habits;
    private final OpeningHabit openings;
    private final PacePriors priors;
    private final double now;

    TableOdds(ClassTrack track, List<SeatProgress> seats, ClassTempo tempo, TapHabits habits, OpeningHabit openings,
              PacePriors priors, double now) {
        this.track = track;
        this.seats = seats;
        this.tempo = tempo;
        this.habits = habits;
        this.openings = openings;
        this.priors = priors;
        this.now = now;
    }

    /**
     * Odds of every seat. How many done seats stay unticked until the next sweep differs from hour to hour: somebody
     * busy at the pot ticks nobody. So the share ticked at once since the last sweep is estimated from the other seats:
     * ticks seen against ticks missing. A tablet silent for all thereby speaks about the tablet, not about everybody.
     */
    List<SeatOdds> weigh() {
        int n = seats.size();
        double[] share = new double[n];
        Arrays.fill(share, habits.promptShare());
        List<Optional<SeatOdds.Weighing>> weighings = IntStream.range(0, n)
                .mapToObj(i -> judged(i) ? Optional.of(weighing(i)) : Optional.<SeatOdds.Weighing>empty()).toList();
        List<SeatOdds> all = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            List<SeatOdds> next = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double prompt = share[i];
                next.add(weighings.get(i).map(w -> w.odds(prompt)).orElse(SeatOdds.NOT_JUDGED));
            }
            all = withOpenings(next);
            double missing = 0;
            for (SeatOdds seat : all) {
                missing += seat.unswept();
            }
            for (int i = 0; i < n; i++) {
                double others = missing - all.get(i).unswept();
                double seen = habits.loneTapsSinceSweep();
                share[i] = (priors.taps().promptWindowTaps() * habits.promptShare() + seen)
                        / (priors.taps().promptWindowTaps() + seen + others);
            }
        }
        return all;
    }

    /** The first led step after step k, or the number of steps. */
    private int nextLed(int k) {
        int led = k + 1;
        while (led < track.steps().size() && !track.steps().get(led).led()) {
            led++;
        }
        return led;
    }

    private boolean judged(int i) {
        return seats.get(i).standing() == SeatProgress.Standing.WORKING;
    }

    private SeatOdds.Weighing weighing(int i) {
        SeatProgress progress = seats.get(i);
        int k = progress.step();
        int following = k + 1;
        boolean before = following <= track.pourStep();
        boolean open = before && !(track.steps().get(following).led() && track.openedMinutes().get(following) > now)
                && takesAll(following);
        int led = nextLed(k);
        double look = 0;
        double rest = 0;
        if (led <= track.pourStep()) {
            double opened = track.openedMinutes().get(led);
            look = opened <= now ? opened - OPENED_LOOK_MINUTES : now - CLOSED_LOOK_MINUTES;
            for (int j = following; j < led; j++) {
                rest += tempo.belief(i, j).meanMinutes();
            }
        }
        double late = 0;
        if (progress.startsByTap() && !progress.done().isEmpty()) {
            late = tempo.lateness(i, progress.done().get(progress.done().size() - 1).step());
        }
        SeatOdds.Next next = new SeatOdds.Next(open, tempo.belief(i, open ? following : k), look, rest,
                open ? laterMinutes(i, following) : List.of(), behindMinutes(k));
        return new SeatOdds.Weighing(track.seats().get(i), progress, tempo.belief(i, k), next, habits, late, now,
                priors);
    }

    /** When those who wait for a station at step k would be through with it, were one free now, minutes. */
    private List<Double> behindMinutes(int k) {
        if (takesAll(k)) {
            return List.of();
        }
        double share = track.steps().get(k).stations().get().eachMinutes() / track.steps().get(k).planMinutes();
        List<Double> behind = new ArrayList<>();
        double kept = 0;
        for (int j = 0; j < seats.size(); j++) {
            if (seats.get(j).standing() == SeatProgress.Standing.QUEUED && seats.get(j).step() == k) {
                double mean = tempo.belief(j, k).meanMinutes();
                behind.add(kept + mean);
                kept += share * mean;
            }
        }
        return behind;
    }

    /** Whether a seat begins the step when it comes to it; where it waits for a turn its silence tells nothing. */
    private boolean takesAll(int step) {
        return track.steps().get(step).stations().isEmpty();
    }

    /** When seat i, were it at the step {@code from} now, would be through with each open one after it, minutes. */
    private List<Double> laterMinutes(int i, int from) {
        List<Double> later = new ArrayList<>();
        double sum = tempo.belief(i, from).meanMinutes();
        for (int j = from + 1; j <= track.pourStep(); j++) {
            if (track.steps().get(j).led() && track.openedMinutes().get(j) > now || !takesAll(j)) {
                break;
            }
            sum += tempo.belief(i, j).meanMinutes();
            later.add(sum);
        }
        return later;
    }

    /** Brings in what the led step after each step says, opened or still closed. */
    private List<SeatOdds> withOpenings(List<SeatOdds> fresh) {
        List<SeatOdds> result = new ArrayList<>(fresh);
        for (int k = 0; k < track.pourStep(); k++) {
            if (!track.steps().get(k + 1).led()) {
                continue;
            }
            double opened = track.openedMinutes().get(k + 1);
            boolean closed = opened > now;
            double moment = closed ? now : opened;
            double[] undone = new double[seats.size()];
            int present = 0;
            for (int i = 0; i < undone.length; i++) {
                if (track.seats().get(i).isHere(moment)) {
                    present++;
                    undone[i] = undone(i, k, opened, fresh.get(i));
                }
            }
            double blind = priors.openings().blindAfter(now - lastDone(k));
            OpeningEvidence evidence = new OpeningEvidence(openings, present, undone);
            for (int i = 0; i < undone.length; i++) {
                if (judged(i) && nextLed(seats.get(i).step()) == k + 1 && track.seats().get(i).isHere(moment)) {
                    double[] likelihood = closed ? evidence.whileClosed(i, blind)
                            : evidence.whenOpened(i, priors.openings().blind());
                    result.set(i, fresh.get(i).given(likelihood[0], likelihood[1]));
                }
            }
        }
        return result;
    }

    /** When a seat was last ticked for step k; now when none was, for then nothing was waited for yet. */
    private double lastDone(int k) {
        double last = Double.NEGATIVE_INFINITY;
        for (SeatProgress seat : seats) {
            for (SeatProgress.Done done : seat.done()) {
                last = done.step() == k ? Math.max(last, done.tapMinutes()) : last;
            }
        }
        return last == Double.NEGATIVE_INFINITY ? now : last;
    }

    /** P(seat i was still at step k, or before it, when the instructor last looked). */
    private double undone(int i, int k, double opened, SeatOdds latest) {
        SeatProgress progress = seats.get(i);
        if (judged(i) && nextLed(progress.step()) == k + 1) {
            return 1 - latest.settled();
        }
        if (progress.step() <= k) {
            return 1;
        }
        for (SeatProgress.Done done : progress.done()) {
            if (done.step() == k && done.tapMinutes() > opened) {
                return habits.tapsTogether(done.tapMinutes()) > 1 ? 0.35 : 0.6;
            }
        }
        return 0;
    }
}
