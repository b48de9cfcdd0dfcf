package benchpace.pace.engine;

import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceView;
import benchpace.pace.SeatPace;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.UntickedSeat;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import benchpace.pace.forecast.Forecast;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Judges a class from its record. Every half minute, counted from the class's start, each seat is weighed: working,
 * stalled, or done but not ticked. Two such evaluations in a row raise a flag or take it back; what happens in between
 * only ever lowers one (the seat was ticked, paused, left, or answered for). So the flags are a function of the record
 * alone: a board that restarts and a replay of the log show the same.
 *
 * <p>Use: keep the record and the {@link PaceMemory} of the last time, {@link #follow} them to now, then
 * {@link #judge}.
 */
public final class PaceEngine {
    /** Length of the grid the rule is evaluated on. */
    public static final double TICK_MINUTES = 0.5;
    private static final double ROUNDING = 1e-9;

    private final PacePriors priors;

    public PaceEngine(PacePriors priors) {
        this.priors = priors;
    }

    /** What it judges by. */
    public PacePriors priors() {
        return priors;
    }

    /**
     * The memory brought up to {@code nowMinutes}, one evaluation for each half minute it has not seen.
     *
     * @param memory of the same class; {@link PaceMemory#EMPTY} rebuilds it from the class's start
     */
    public PaceMemory remember(ClassTrack track, double nowMinutes, PaceMemory memory) {
        PaceMemory current = memory;
        long last = (long) Math.floor(nowMinutes / TICK_MINUTES + ROUNDING);
        for (long tick = memory.tick() + 1; tick <= last; tick++) {
            double at = tick * TICK_MINUTES;
            current = step(track.asOf(at + ROUNDING), at, tick, current);
        }
        return current;
    }

    /**
     * The memory brought from an earlier record to a newer one. When the past itself has changed (an undo, a tap sent
     * late) it is made anew from before the change, as if the class had always been recorded so.
     *
     * @param before the record that was judged last
     * @param memory made from it
     */
    public PaceMemory follow(ClassTrack before, PaceMemory memory, ClassTrack track, double nowMinutes) {
        PaceMemory current = memory;
        while (current.tick() >= 0 && (current.tick() * TICK_MINUTES > nowMinutes + ROUNDING
                || !track.samePast(before, current.tick() * TICK_MINUTES + ROUNDING))) {
            current = current.earlier().orElse(PaceMemory.EMPTY);
        }
        return remember(track, nowMinutes, current);
    }

    private PaceMemory step(ClassTrack track, double at, long tick, PaceMemory memory) {
        int events = track.moments().size();
        PaceMemory.Look[] looks = looks(track, at, events == memory.events());
        PacePriors.Rule rule = priors.rule().at(track.seats().size(), priors.spread(track));
        Map<Integer, PaceMemory.SeatMemory> next = new HashMap<>();
        for (int i = 0; i < looks.length; i++) {
            int number = track.seats().get(i).seat();
            next.put(number, memory.seat(number).next(tick, looks[i], rule));
        }
        return new PaceMemory(tick, events, next, memory.toGoBackTo());
    }

    /** What one evaluation says of each seat. @param quiet whether nothing was recorded since the one before */
    PaceMemory.Look[] looks(ClassTrack track, double at, boolean quiet) {
        Evaluation evaluation = new Evaluation(track, at, priors);
        boolean silent = evaluation.tabletSilent();
        int holder = evaluation.holder();
        PaceMemory.Look[] looks = new PaceMemory.Look[track.seats().size()];
        for (int i = 0; i < looks.length; i++) {
            int judged = evaluation.judged(i) ? evaluation.seats.get(i).step() : -1;
            boolean unbelievable = judged >= 0 && unbelievable(evaluation, i);
            boolean overdue = unbelievable || judged >= 0 && helpedInVain(evaluation, i);
            looks[i] = new PaceMemory.Look(judged, evaluation.odds.get(i).stalled(), evaluation.claimed(i), overdue,
                    unbelievable && holder == i, quiet, silent);
        }
        return looks;
    }

    /** So long over its time that even a tick surely forgotten deserves the question. */
    private static boolean unbelievable(Evaluation evaluation, int i) {
        return evaluation.overMinutes(i) >= PacePriors.Rule.ASK_AFTER_MINUTES
                && evaluation.track.seats().get(i).lastStillAtIt(evaluation.seats.get(i).step())
                < evaluation.now - PacePriors.Rule.ASK_AFTER_MINUTES;
    }

    /** A helper was there and said "sorted", yet it is far over its time: the question stays until it moves on. */
    private static boolean helpedInVain(Evaluation evaluation, int i) {
        SeatProgress seat = evaluation.seats.get(i);
        SeatTrack track = evaluation.track.seats().get(i);
        return track.lastStillAtIt(seat.step()) < track.lastSorted(seat.startMinutes(), evaluation.now)
                && seat.workedMinutes() >= PacePriors.Rule.SLOW_FACTOR
                * evaluation.tempo.belief(i, seat.step()).meanMinutes();
    }

    /**
     * What is believed of the class at a moment, weighed once for all that is asked of that moment.
     *
     * @param track as recorded until then, nothing later
     */
    public Evaluation evaluate(ClassTrack track, double nowMinutes) {
        return new Evaluation(track, nowMinutes, priors);
    }

    /**
     * The class at {@code nowMinutes}.
     *
     * @param track as recorded until then, nothing later
     * @param memory brought up to {@code nowMinutes} by {@link #remember}
     */
    public PaceView judge(ClassTrack track, double nowMinutes, PaceMemory memory) {
        return judge(evaluate(track, nowMinutes), memory);
    }

    /** The class at the moment of the evaluation. @param memory brought up to it by {@link #remember} */
    public PaceView judge(Evaluation evaluation, PaceMemory memory) {
        List<SeatPace> seats = new ArrayList<>();
        for (int i = 0; i < evaluation.seats.size(); i++) {
            seats.add(seat(evaluation, i, memory));
        }
        double next = (memory.tick() + 1) * TICK_MINUTES;
        return new PaceView(evaluation.now, seats, evaluation.quietMinutes(), evaluation.tabletSilent(), next);
    }

    /** Levels alone, by seat number: what {@link #judge} would show, without the prices. */
    public Map<Integer, Level> levels(ClassTrack track, double nowMinutes, PaceMemory memory) {
        Map<Integer, Level> levels = new HashMap<>();
        List<SeatProgress> progress = SeatProgress.all(track, nowMinutes);
        for (int i = 0; i < progress.size(); i++) {
            SeatTrack seat = track.seats().get(i);
            levels.put(seat.seat(), level(seat, progress.get(i), memory, nowMinutes));
        }
        return levels;
    }

    /** When the last candle will be ready. */
    public Forecast forecast(ClassTrack track, double nowMinutes) {
        return evaluate(track, nowMinutes).forecast();
    }

    /**
     * Who is not ticked for the step before the next led one, and what leaving each behind would cost.
     *
     * @param step index of the led step about to be opened
     */
    public List<UntickedSeat> beforeOpening(ClassTrack track, double nowMinutes, int step) {
        return beforeOpening(evaluate(track, nowMinutes), step);
    }

    /** The same at the moment of the evaluation. */
    public List<UntickedSeat> beforeOpening(Evaluation before, int step) {
        List<Integer> left = IntStream.range(0, before.seats.size()).filter(i -> before.seats.get(i).step() < step)
                .filter(i -> before.judged(i) || before.waitsForTurn(i)).boxed().toList();
        if (left.isEmpty()) {
            return List.of();
        }
        Evaluation after = before.hadOpened(step);
        return left.stream().map(i -> unticked(before, i, (int) Math.round(after.priceMinutes(i)))).toList();
    }

    private static UntickedSeat unticked(Evaluation before, int i, int leaveMinutes) {
        int seat = before.track.seats().get(i).seat();
        if (before.waitsForTurn(i)) {
            return new UntickedSeat(seat, 0, before.minutesWithTurn(i), leaveMinutes);
        }
        double forgotten = before.odds.get(i).forgotten();
        return new UntickedSeat(seat, forgotten, (1 - forgotten) * before.remainingMinutes(i), leaveMinutes);
    }

    private SeatPace seat(Evaluation evaluation, int i, PaceMemory memory) {
        SeatTrack seat = evaluation.track.seats().get(i);
        SeatProgress progress = evaluation.seats.get(i);
        Level level = level(seat, progress, memory, evaluation.now);
        Level eased = eased(seat, progress, memory, evaluation.now);
        boolean helped = seat.claims().stream().anyMatch(c -> c.covers(evaluation.now));
        if (!evaluation.judged(i)) {
            return new SeatPace(seat.seat(), level, -1, "", 0, 0, 0, 0, 0, 0, helped, eased);
        }
        SeatOdds odds = evaluation.odds.get(i);
        int price = 0;
        double saved = 0;
        if (level != Level.NONE || eased != Level.NONE) {
            price = (int) Math.round(evaluation.priceMinutes(i));
            saved = evaluation.savedMinutes(i);
        }
        return new SeatPace(seat.seat(), level, progress.step(), evaluation.track.steps().get(progress.step()).id(),
                odds.stalled(), odds.forgotten(), progress.workedMinutes(),
                evaluation.expectedMinutes(i), price, saved, helped, eased);
    }

    /** What calls for somebody: what memory says, unless somebody was there just now. */
    private static Level level(SeatTrack seat, SeatProgress progress, PaceMemory memory, double now) {
        return justSorted(seat, progress, now) ? Level.NONE : standing(seat, progress, memory, now);
    }

    /** What is silenced while somebody was there just now; the seat is as slow as before. */
    private static Level eased(SeatTrack seat, SeatProgress progress, PaceMemory memory, double now) {
        return justSorted(seat, progress, now) ? standing(seat, progress, memory, now) : Level.NONE;
    }

    private static boolean justSorted(SeatTrack seat, SeatProgress progress, double now) {
        return now < seat.lastSorted(progress.startMinutes(), now) + PacePriors.Rule.SORTED_MINUTES;
    }

    /** What memory says, unless the seat has moved on, is not judged now or was answered for since. */
    private static Level standing(SeatTrack seat, SeatProgress progress, PaceMemory memory, double now) {
        PaceMemory.SeatMemory remembered = memory.seat(seat.seat());
        if (progress.standing() != SeatProgress.Standing.WORKING || progress.step() != remembered.step()) {
            return Level.NONE;
        }
        double shown = remembered.changedTick() * TICK_MINUTES;
        if (remembered.level() == Level.SLIPPING && seat.lastStillAtIt(progress.step()) > shown) {
            return Level.NONE;
        }
        return remembered.level();
    }
}
