package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.forecast.LatestDone;
import benchpace.pace.forecast.StationQueue;
import benchpace.report.CandleTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A class gone through once more, step by step, from what really happened in it:
 *
 * <ul>
 * <li>a seat's own time at a step, from when it could begin: with its breaks, without waiting;</li>
 * <li>a led step opened so long after all were ready whom the instructor waited for; as many as were not ready when it
 * was opened are not waited for this time either ({@link LatestDone}, as the forecast of a running class has it);</li>
 * <li>a talk takes its time box, or until the next step is opened;</li>
 * <li>turns at stations, first come, first served ({@link StationQueue}); what the record believes of a turn beside
 * that is kept;</li>
 * <li>guests come when they came, and who was away when a step was opened begins when he is back;</li>
 * <li>a candle takes as long from its pour, a second pour comes as long after the first.</li>
 * </ul>
 *
 * With nothing otherwise it gives back the times it was made from.
 */
final class Reenactment {
    private static final double ROUNDING = 1e-9;
    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double ALWAYS = Double.NEGATIVE_INFINITY;
    private static final double ALL = 1;

    private final ClassTrack track;
    private final double share;
    private final int seats;
    private final int last;
    private final double[] arrived;
    private final int[] candles;

    // what the record gives, by step
    private final boolean[] opens;
    private final double[] lag;
    private final int[] missing;
    private final boolean[][] counted;

    // and by seat and step
    private final boolean[][] does;
    private final boolean[][] waits;
    private final double[][] back;
    private final double[][] late;
    private final double[][] keeps;
    private final double[][] work;
    private final double[][] waited;

    // and by candle
    private final double[] again;
    private final double[] cure;

    /**
     * When things happened.
     *
     * @param opened of each step up to the pour, minutes from the class's start; NaN where it was not opened
     * @param done   of each seat, in the track's order, at each step; endless where it never was
     * @param ready  of each candle, in the order of its seat in the track
     */
    record Played(double[] opened, double[][] done, double[] ready) {
        double lastReady() {
            return Arrays.stream(ready).max().orElseThrow();
        }
    }

    /**
     * The class as its ticks have it: whoever was not ready when a step was opened was not waited for.
     *
     * @param times   when each seat was done
     * @param candles by seat number, those that count, with when each was ready
     */
    Reenactment(ClassTrack track, TickedTimes times, Map<Integer, CandleTime> candles) {
        this(track, times, candles, ALL);
    }

    /** @param share of the table that the instructor waits for, if so many were ready; above 0, at most 1 */
    Reenactment(ClassTrack track, TickedTimes times, Map<Integer, CandleTime> candles, double share) {
        this.share = share;
        this.track = track;
        this.seats = track.seats().size();
        this.last = track.pourStep();
        this.arrived = track.seats().stream().mapToDouble(SeatTrack::arrivedMinutes).toArray();
        this.candles = IntStream.range(0, seats).filter(i -> candles.containsKey(track.seats().get(i).seat()))
                .toArray();
        int steps = last + 1;
        opens = new boolean[steps];
        lag = new double[steps];
        missing = new int[steps];
        counted = new boolean[steps][seats];
        does = new boolean[seats][steps];
        waits = new boolean[seats][steps];
        back = new double[seats][steps];
        late = new double[seats][steps];
        keeps = new double[seats][steps];
        work = new double[seats][steps];
        waited = new double[seats][steps];
        again = new double[this.candles.length];
        cure = new double[this.candles.length];
        double[] at = learn(times);
        for (int c = 0; c < again.length; c++) {
            CandleTime candle = candles.get(track.seats().get(this.candles[c]).seat());
            double poured = at[this.candles[c]];
            again[c] = poured < NEVER ? candle.pouredMinutes() - poured : candle.pouredMinutes();
            cure[c] = candle.readyMinutes() - candle.pouredMinutes();
        }
    }

    // ---- from the record

    /** Takes each step apart; when each seat was through with the last one, endless if it never was. */
    private double[] learn(TickedTimes times) {
        double[] at = arrived.clone();
        double[] heardSince = new double[seats];
        Arrays.fill(heardSince, NEVER);
        double before = 0;
        for (int k = 0; k <= last; k++) {
            double opened = track.steps().get(k).led() ? track.openedMinutes().get(k) : NEVER;
            opens[k] = opened < NEVER;
            if (opens[k]) {
                opening(k, opened, before, at);
                cutShort(opened, at, heardSince);
                before = opened;
            }
            double[] came = new double[seats];
            for (int i = 0; i < seats; i++) {
                came[i] = came(i, k, opened, at[i], times);
            }
            turns(k, came, times);
            for (int i = 0; i < seats; i++) {
                if (does[i][k]) {
                    double begins = came[i] + waited[i][k];
                    double done = until(i, k, begins, times);
                    work[i][k] = Math.max(0, done - begins);
                    at[i] = Math.max(begins, done);
                    heardSince[i] = track.steps().get(k).kind() == WorkKind.TALK ? begins : NEVER;
                } else {
                    at[i] = NEVER;
                }
            }
        }
        return at;
    }

    /** Whoever still hears a talk when a step is opened hears no more of it. */
    private void cutShort(double opened, double[] at, double[] heardSince) {
        for (int i = 0; i < seats; i++) {
            if (heardSince[i] < NEVER) {
                at[i] = Math.max(heardSince[i], Math.min(at[i], opened));
            }
        }
    }

    private void opening(int k, double opened, double before, double[] at) {
        int count = 0;
        for (int i = 0; i < seats; i++) {
            SeatTrack seat = track.seats().get(i);
            counted[k][i] = seat.arrivedMinutes() <= opened && opened < seat.leftMinutes();
            missing[k] += counted[k][i] && at[i] > opened + ROUNDING ? 1 : 0;
            count += counted[k][i] ? 1 : 0;
        }
        missing[k] = Math.max(missing[k], OpeningHabit.missing(share, count));
        lag[k] = opened - Math.max(before, allBut(missing[k], counted[k], at));
    }

    /** When all but so many of those that count are ready; the beginning of time if nobody is to be waited for. */
    private double allBut(int few, boolean[] who, double[] at) {
        int count = 0;
        for (boolean one : who) {
            count += one ? 1 : 0;
        }
        if (few >= count) {
            return ALWAYS;
        }
        LatestDone latest = new LatestDone(count);
        latest.clear(few);
        for (int i = 0; i < seats; i++) {
            if (who[i]) {
                latest.add(at[i]);
            }
        }
        return latest.allButMissing();
    }

    /** When a seat came to a step; endless if it never did it. */
    private double came(int i, int k, double opened, double at, TickedTimes times) {
        double done = finished(i, k, times);
        does[i][k] = at < NEVER && (done < NEVER || track.steps().get(k).kind() == WorkKind.TALK);
        waits[i][k] = opens[k] && opened <= done;
        back[i][k] = ALWAYS;
        double came = waits[i][k] ? Math.max(at, opened) : at;
        for (Span pause : track.seats().get(i).pauses()) {
            if (pause.fromMinutes() >= at && pause.fromMinutes() <= came && pause.toMinutes() <= done) {
                back[i][k] = Math.max(back[i][k], pause.toMinutes());
            }
        }
        return does[i][k] ? Math.max(came, back[i][k]) : NEVER;
    }

    /** When a seat was done with a step, or with the next one that is worked at; endless if it never was. */
    private double finished(int i, int k, TickedTimes times) {
        for (int next = k; next <= last; next++) {
            if (track.steps().get(next).kind().isWorked()) {
                return Double.isNaN(times.done()[i][next]) ? NEVER : times.done()[i][next];
            }
        }
        return NEVER;
    }

    private double until(int i, int k, double begins, TickedTimes times) {
        PaceStep step = track.steps().get(k);
        if (step.kind().isWorked()) {
            return times.done()[i][k];
        }
        boolean ledNext = k < last && track.steps().get(k + 1).led();
        double box = Math.min(finished(i, k, times), begins + step.planMinutes());
        return ledNext ? begins + step.planMinutes() : Math.min(box, Math.max(begins, nextOpening(k)));
    }

    /** A talk is over when the next led step is opened. */
    private double nextOpening(int k) {
        for (int next = k + 1; next < track.steps().size(); next++) {
            if (track.steps().get(next).led()) {
                return track.openedMinutes().get(next);
            }
        }
        return NEVER;
    }

    private void turns(int k, double[] came, TickedTimes times) {
        PaceStep step = track.steps().get(k);
        if (step.stations().isEmpty() || !step.kind().isWorked()) {
            return;
        }
        PaceStations stations = step.stations().get();
        StationQueue queue = new StationQueue(stations.atOnce());
        IntStream.range(0, seats).filter(i -> does[i][k]).boxed().sorted(Comparator.comparing(i -> grid(came[i])))
                .forEach(i -> {
                    double done = times.done()[i][k];
                    double free = queue.turn(came[i], 0);
                    double believed = times.turns().map(turns -> turns[i][k]).orElse(free);
                    double turn = Math.max(came[i], Math.min(done, believed));
                    keeps[i][k] = kept(step, stations, Math.max(0, done - turn));
                    waited[i][k] = turn - came[i];
                    queue.turn(Math.max(came[i], free), kept(step, stations, Math.max(0, done - free)));
                });
        double[] fair = queued(k, stations.atOnce(), came);
        for (int i = 0; i < seats; i++) {
            late[i][k] = does[i][k] ? came[i] + waited[i][k] - fair[i] : 0;
        }
    }

    /** How long a seat keeps its station, as the pace believes: as planned, or for as long as its step is overdue. */
    private static double kept(PaceStep step, PaceStations stations, double took) {
        double rest = Math.max(0, step.planMinutes() - stations.eachMinutes());
        return Math.min(took, Math.max(stations.eachMinutes(), took - rest));
    }

    /** Of moments that are the same but for rounding. */
    private static double grid(double minutes) {
        return Math.rint(minutes / ROUNDING) * ROUNDING;
    }

    /** When the turn of each seat begins, first come, first served; its coming for those that never do the step. */
    private double[] queued(int k, int atOnce, double[] came) {
        int[] who = IntStream.range(0, seats).filter(i -> does[i][k]).toArray();
        double[] turns = StationQueue.turns(atOnce, Arrays.stream(who).mapToDouble(i -> grid(came[i])).toArray(),
                Arrays.stream(who).mapToDouble(i -> keeps[i][k]).toArray());
        double[] all = came.clone();
        for (int j = 0; j < who.length; j++) {
            all[who[j]] = turns[j];
        }
        return all;
    }

    // ---- once more

    /**
     * The class with something otherwise. What lies between two openings is gone through twice: to learn when the
     * second comes, and then knowing it, as talks that are still heard are over with it.
     */
    Played played(Otherwise other) {
        double[] at = arrived.clone();
        double[] atOpening = at;
        int since = 0;
        double[] opened = new double[last + 1];
        double[][] done = new double[seats][last + 1];
        double before = 0;
        for (int k = 0; k <= last; k++) {
            opened[k] = Double.NaN;
            if (!other.left[k] && (other.led == k || opens[k] && other.freed != k)) {
                before = opened(k, before, at, other);
                opened[k] = before;
                at = atOpening;
                for (int again = since; again < k; again++) {
                    at = pass(again, opened[again], at, before, other, done);
                }
                atOpening = at;
                since = k;
            }
            at = pass(k, opened[k], at, NEVER, other, done);
        }
        double[] ready = new double[candles.length];
        for (int c = 0; c < ready.length; c++) {
            double poured = at[candles[c]] < NEVER ? at[candles[c]] : 0;
            ready[c] = poured + again[c] + cure[c] * other.cureShare[candles[c]];
        }
        return new Played(opened, done, ready);
    }

    private double opened(int k, double before, double[] at, Otherwise other) {
        if (other.led == k) {
            boolean[] who = new boolean[seats];
            int count = 0;
            for (int i = 0; i < seats; i++) {
                who[i] = does[i][k] && arrived[i] <= Math.max(before, 0);
                count += who[i] ? 1 : 0;
            }
            return Math.max(before, allBut(OpeningHabit.missing(other.share, count), who, at)) + other.lag;
        }
        double base = Math.max(before, allBut(missing[k], counted[k], at));
        boolean opensATalk = track.steps().get(k).kind() == WorkKind.TALK;
        return base + Math.max(Math.min(0, lag[k]), lag[k] - (opensATalk ? 0 : other.sooner[k]));
    }

    /** When each seat is through with a step. @param over when talks are over, endless if nothing is opened */
    private double[] pass(int k, double opened, double[] at, double over, Otherwise other, double[][] done) {
        double[] through = other.left[k] ? at.clone() : new double[seats];
        if (!other.left[k]) {
            double[] turn = turns(k, opened, at, other);
            boolean talk = track.steps().get(k).kind() == WorkKind.TALK;
            for (int i = 0; i < seats; i++) {
                double shorter = other.less[i][k] + (talk ? other.sooner[k] : 0);
                double end = turn[i] + Math.max(0, work[i][k] - shorter);
                double heard = talk ? Math.max(turn[i], Math.min(end, over)) : end;
                through[i] = does[i][k] ? heard : NEVER;
            }
        }
        IntStream.range(0, seats).forEach(i -> done[i][k] = through[i]);
        return through;
    }

    /** When each seat can begin with a step. */
    private double[] turns(int k, double opened, double[] at, Otherwise other) {
        double[] came = new double[seats];
        for (int i = 0; i < seats; i++) {
            boolean held = !Double.isNaN(opened) && (other.led == k || waits[i][k]);
            came[i] = does[i][k] ? Math.max(held ? Math.max(at[i], opened) : at[i], back[i][k]) : NEVER;
        }
        PaceStep step = track.steps().get(k);
        if (step.stations().isEmpty() || !step.kind().isWorked()) {
            return came;
        }
        double[] turn = queued(k, other.atOnce[k] > 0 ? other.atOnce[k] : step.stations().get().atOnce(), came);
        for (int i = 0; i < seats; i++) {
            turn[i] = Math.max(came[i], turn[i] + late[i][k]);
        }
        return turn;
    }

    // ---- what it shows

    /** Of an opening: minutes after all were ready who were waited for. */
    double lag(int k) {
        return lag[k];
    }

    boolean opens(int k) {
        return opens[k];
    }

    /** How long a seat was at a step, or heard a talk, minutes; nothing if it never did. */
    double work(int i, int k) {
        return work[i][k];
    }

    boolean does(int i, int k) {
        return does[i][k];
    }

    /** How long a seat waited for its turn at a step, minutes. */
    double waitedForTurn(int i, int k) {
        return waited[i][k];
    }
}
