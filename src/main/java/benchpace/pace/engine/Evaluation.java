package benchpace.pace.engine;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningEvidence;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.belief.TapHabits;
import benchpace.pace.forecast.FinishForecast;
import benchpace.pace.forecast.Forecast;
import benchpace.pace.forecast.PourDraws;
import benchpace.pace.forecast.StationQueue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Everything believed about a class at one moment, before memory: odds, draws of the pour, prices. */
public final class Evaluation {
    static final int DRAWS = 128;
    static final int FORECAST_DRAWS = 1000;
    private static final double SILENT_MINUTES = 4;
    private static final double SILENT_TAPS_DUE = 2;
    private static final int ROUNDS = 3;
    private static final double CLOSED_LOOK_MINUTES = 1.3;
    private static final double OPENED_LOOK_MINUTES = 0.3;
    static final long SEED = 20_270_304L;

    final ClassTrack track;
    final double now;
    final PacePriors priors;
    final TapHabits habits;
    public final List<SeatProgress> seats;
    public final ClassTempo tempo;
    public final List<SeatOdds> odds;
    public final OpeningHabit openings;
    private PourDraws draws;

    public Evaluation(ClassTrack track, double now, PacePriors priors) {
        this.track = track;
        this.now = now;
        this.priors = priors;
        this.habits = TapHabits.of(track, priors);
        this.seats = SeatProgress.all(track, now);
        this.openings = OpeningHabit.of(track, seats, now, priors);
        this.tempo = new ClassTempo(track, seats, habits, priors);
        this.odds = missed(weigh());
    }

    /**
     * Odds of every seat. How many done seats stay unticked until the next sweep differs from hour to hour: somebody
     * busy at the pot ticks nobody. So the share ticked at once since the last sweep is estimated from the other seats:
     * ticks seen against ticks missing. A tablet silent for all thereby speaks about the tablet, not about everybody.
     */
    private List<SeatOdds> weigh() {
        int n = seats.size();
        double[] share = new double[n];
        Arrays.fill(share, habits.promptShare());
        List<SeatOdds> all = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            List<SeatOdds> next = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                next.add(judged(i) ? weighing(i, share[i]).odds() : SeatOdds.NOT_JUDGED);
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

    /** A tick that all wait for is missed sooner or later: the longer nobody does, the less it was only forgotten. */
    private List<SeatOdds> missed(List<SeatOdds> weighed) {
        int holder = holder();
        if (holder < 0) {
            return weighed;
        }
        List<SeatOdds> result = new ArrayList<>(weighed);
        result.set(holder, weighed.get(holder).unnoticed(priors.taps().unmissed(overMinutes(holder))));
        return result;
    }

    /** The first led step after step k, or the number of steps. */
    private int nextLed(int k) {
        int led = k + 1;
        while (led < track.steps().size() && !track.steps().get(led).led()) {
            led++;
        }
        return led;
    }

    boolean judged(int i) {
        return seats.get(i).standing() == SeatProgress.Standing.WORKING;
    }

    boolean waitsForTurn(int i) {
        return seats.get(i).standing() == SeatProgress.Standing.QUEUED;
    }

    /** What a seat that waits for its turn still needs for its step, those before it included, minutes on average. */
    double minutesWithTurn(int i) {
        int k = seats.get(i).step();
        PaceStep step = track.steps().get(k);
        double share = step.stations().orElseThrow().eachMinutes() / step.planMinutes();
        StationQueue queue = new StationQueue(step.stations().orElseThrow().atOnce());
        List<Integer> there = IntStream.range(0, seats.size()).filter(j -> seats.get(j).step() == k).boxed().toList();
        there.stream().filter(this::judged).map(j -> share * remainingMinutes(j)).sorted(Comparator.reverseOrder())
                .limit(step.stations().orElseThrow().atOnce()).forEach(kept -> queue.turn(0, kept));
        for (int j : there.stream().filter(this::waitsForTurn)
                .sorted(Comparator.comparing(j -> seats.get(j).startMinutes())).toList()) {
            double mean = tempo.belief(j, k).meanMinutes();
            double turn = queue.turn(0, share * mean);
            if (j == i) {
                return turn + mean;
            }
        }
        throw new IllegalArgumentException("seat " + track.seats().get(i).seat() + " waits for no turn");
    }

    /** Whether a helper is at the seat, or on the way, for the step it is judged at. */
    boolean claimed(int i) {
        return judged(i) && track.seats().get(i).isClaimed(seats.get(i).startMinutes(), now);
    }

    private SeatOdds.Weighing weighing(int i, double promptShare) {
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
        return new SeatOdds.Weighing(track.seats().get(i), progress, tempo.belief(i, k), next, habits, promptShare,
                late, now, priors);
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

    /**
     * The one seat that holds the open step: every other guest at the table is through with all that is open, and only
     * this one is still at it, as far as the ticks tell.
     *
     * @return its index, -1 when there is no such seat or it is alone at the table
     */
    int holder() {
        int closed = 0;
        while (closed <= track.pourStep()
                && !(track.steps().get(closed).led() && track.openedMinutes().get(closed) > now)) {
            closed++;
        }
        int holder = -1;
        int here = 0;
        for (int i = 0; i < seats.size(); i++) {
            if (!track.seats().get(i).isHere(now)) {
                continue;
            }
            here++;
            if (seats.get(i).step() < closed) {
                if (holder >= 0) {
                    return -1;
                }
                holder = i;
            }
        }
        return here > 1 && holder >= 0 && judged(holder) ? holder : -1;
    }

    /** What seat i usually needs for its present step at this table, minutes. */
    double expectedMinutes(int i) {
        return tempo.belief(i, seats.get(i).step()).meanMinutes();
    }

    /** How far seat i is over that, minutes; negative while it is not. */
    double overMinutes(int i) {
        return seats.get(i).workedMinutes() - expectedMinutes(i);
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

    PourDraws draws() {
        if (draws == null) {
            draws = new PourDraws(track, seats, odds, tempo, openings, priors, now, DRAWS, SEED,
                    PourDraws.Without.NOTHING);
        }
        return draws;
    }

    /** The same draws in a world that differs in one seat. */
    PourDraws drawsWithout(PourDraws.Without without) {
        return new PourDraws(track, seats, odds, tempo, openings, priors, now, DRAWS, SEED, without);
    }

    /** How much later the last pour is because of seat i: E[last of all] - E[last without it], minutes. */
    double priceMinutes(int i) {
        return Math.max(0, draws().meanLastPour() - drawsWithout(new PourDraws.Without(i, -1)).meanLastPour());
    }

    /** How much sooner the last pour is if somebody walks to seat i now, minutes. */
    double savedMinutes(int i) {
        return Math.max(0, draws().meanLastPour() - drawsWithout(new PourDraws.Without(-1, i)).meanLastPour());
    }

    /** What seat i still needs for its present step if it is at it, minutes, on average over working and stalled. */
    double remainingMinutes(int i) {
        SeatProgress progress = seats.get(i);
        ClassTempo.Belief belief = tempo.belief(i, progress.step());
        double worked = Math.max(1e-3, progress.workedMinutes());
        double left = (Math.log(worked) - belief.meanLog()) / belief.sdLog();
        double beyond = Math.max(1e-9, StandardNormal.survival(left));
        double mean = belief.meanMinutes() * StandardNormal.survival(left - belief.sdLog()) / beyond - worked;
        double stalled = odds.get(i).stalled() / Math.max(1e-9, odds.get(i).stalled() + odds.get(i).working());
        return (1 - stalled) * Math.max(0, mean) + stalled * restIfStalled(belief, progress.workedMinutes());
    }

    /** Mean of work plus stall beyond the time spent, given that it is beyond. */
    private double restIfStalled(ClassTempo.Belief belief, double worked) {
        double sum = 0;
        for (int j = 0; j < SeatOdds.HERMITE.length; j++) {
            double work = Math.exp(belief.meanLog() + SeatOdds.HERMITE[j] * belief.sdLog());
            sum += SeatOdds.HERMITE_WEIGHTS[j] * (Math.max(0, work - worked)
                    + priors.stalls().lengths().meanBeyond(worked - work));
        }
        return sum;
    }

    /**
     * Draws for the forecast of home time. It hangs on the seat that holds the open step alone, whoever may turn out
     * to be slower later on; unless that seat is in time and somebody has not even arrived.
     */
    Forecast forecast() {
        PourDraws many = new PourDraws(track, seats, odds, tempo, openings, priors, now, FORECAST_DRAWS, SEED + 1,
                PourDraws.Without.NOTHING);
        Forecast drawn = new FinishForecast(track, many, priors, now).forecast(SEED + 2);
        int holder = holder();
        if (holder < 0 || overMinutes(holder) < 0 && somebodyIsAwaited()) {
            return drawn;
        }
        return new Forecast(drawn.times(), track.seats().get(holder).seat(), false);
    }

    private boolean somebodyIsAwaited() {
        return track.seats().stream().anyMatch(s -> s.arrivedMinutes() > now && s.leftMinutes() > now);
    }

    /** No tap of any seat for long while several should have been made: the tablet lies idle, not the class. */
    boolean tabletSilent() {
        double due = 0;
        for (SeatOdds seat : odds) {
            due += seat.unswept();
        }
        return quietMinutes() >= SILENT_MINUTES && due >= SILENT_TAPS_DUE;
    }

    double quietMinutes() {
        return now - habits.lastTapMinutes();
    }
}
