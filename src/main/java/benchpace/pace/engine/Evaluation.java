package benchpace.pace.engine;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.belief.TapHabits;
import benchpace.pace.forecast.FinishForecast;
import benchpace.pace.forecast.Forecast;
import benchpace.pace.forecast.Posterior;
import benchpace.pace.forecast.PourDraws;
import benchpace.pace.forecast.StationQueue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Everything believed about a class at one moment, before memory: odds, draws of the pour, prices. */
public final class Evaluation {
    static final int DRAWS = 128;
    static final int FORECAST_DRAWS = 1000;
    private static final double SILENT_MINUTES = 4;
    private static final double SILENT_TAPS_DUE = 2;
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
        this.odds = missed(new TableOdds(track, seats, tempo, habits, openings, priors, now).weigh());
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

    /** The same moment, had the instructor opened that step now. */
    Evaluation hadOpened(int step) {
        List<Double> opened = new ArrayList<>(track.openedMinutes());
        opened.set(step, Math.min(opened.get(step), now));
        return new Evaluation(new ClassTrack(track.steps(), opened, track.cureMinutes(), track.seats()), now, priors);
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

    private Posterior posterior() {
        return new Posterior(track, seats, odds, tempo, openings, priors, now);
    }

    private PourDraws draws() {
        if (draws == null) {
            draws = new PourDraws(posterior(), DRAWS, SEED);
        }
        return draws;
    }

    /** How much later the last pour is because of seat i: E[last of all] - E[last without it], minutes. */
    double priceMinutes(int i) {
        return Math.max(0, draws().meanLastPour() - draws().meanLastPourWithout(i));
    }

    /** How much sooner the last pour is if somebody walks to seat i now, minutes. */
    double savedMinutes(int i) {
        return Math.max(0, draws().meanLastPour() - draws().meanLastPourHelping(i));
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
    public Forecast forecast() {
        Forecast drawn = new FinishForecast(posterior()).forecast(FORECAST_DRAWS, SEED + 1, SEED + 2);
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
