package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.ReadyOutlook;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.belief.TapHabits;
import benchpace.pace.forecast.Lots;
import benchpace.report.CandleTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * What a class would have saved with one thing changed. The record leaves open how it really went: ticks come late,
 * nobody knows why a seat was slow, a candle that no hand tried was ready about then. So it is drawn many times from
 * what is believed of it, and each time gone through as it was and with each change, over the same lots; the savings
 * are those of the last candle.
 */
public final class WhatIf {
    /** As many ways as the range of a saving rests on: its ends are then right to about a fifth of its width. */
    public static final int USUAL = 400;
    /** A suggestion saves at least this, minutes, in nine of ten ways. */
    private static final double LEAST_MINUTES = 2;
    private static final int MOST_SUGGESTIONS = 3;
    private static final int CANDLE = -2;
    private static final int HELP = -3;
    private static final int CHANGED = -4;

    private final Past past;
    private final ClassTrack track;
    private final PacePriors priors;
    private final TickedTimes.Draws times;
    private final Standstills standstills;
    private final OpeningHabit habit;
    private final Reenactment asWas;
    private final List<Double> lags = new ArrayList<>();

    private WhatIf(Past past) {
        this.past = past;
        this.track = past.track();
        this.priors = past.engine().priors();
        double end = track.moments().stream().mapToDouble(m -> m).max().orElse(0);
        List<SeatProgress> seats = SeatProgress.all(track, end);
        ClassTempo tempo = new ClassTempo(track, seats, TapHabits.of(track, priors), priors);
        this.times = new TickedTimes.Draws(track, tempo);
        this.standstills = new Standstills(track, past.engine(), tempo, past.flags());
        this.habit = OpeningHabit.of(track, seats, end, priors);
        this.asWas = new Reenactment(track, times.ticked(), past.candles());
        for (int k = 1; k <= track.pourStep(); k++) {
            if (asWas.opens(k) && track.steps().get(k - 1).kind().isWorked()) {
                lags.add(asWas.lag(k));
            }
        }
    }

    /**
     * The changes that apply to a class, those that save most first.
     *
     * @param seed  the same gives the same answers
     * @param count how many ways it is drawn in, at least 1
     */
    public static List<Answer> of(Past past, long seed, int count) {
        WhatIf whatIf = new WhatIf(past);
        List<Change> changes = new Changes(past, whatIf.asWas).all();
        double[][] saved = new double[changes.size()][count];
        for (int b = 0; b < count; b++) {
            Lots lots = new Lots(seed, b);
            double share = whatIf.habit.draw(lots.ofClass().nextDouble());
            Reenactment way = new Reenactment(whatIf.track, whatIf.times.drawn(lots, share), whatIf.candles(lots),
                    share);
            double was = way.played(whatIf.nothing()).lastReady();
            for (int c = 0; c < saved.length; c++) {
                saved[c][b] = was - way.played(whatIf.otherwise(changes.get(c), lots, share)).lastReady();
            }
        }
        List<Answer> answers = new ArrayList<>();
        for (int c = 0; c < saved.length; c++) {
            answers.add(new Answer(changes.get(c), Saving.of(saved[c])));
        }
        answers.sort(Comparator.comparingDouble((Answer a) -> -a.saving().p50()));
        return List.copyOf(answers);
    }

    /**
     * Those worth a suggestion, at most three, one of a kind and one of a step: what saves most, and most surely,
     * first. Two of one step could not both be made.
     */
    public static List<Answer> suggestions(List<Answer> answers) {
        List<Answer> suggestions = new ArrayList<>();
        for (Answer answer : answers.stream().filter(a -> a.saving().p10() >= LEAST_MINUTES)
                .sorted(Comparator.comparingDouble(a -> -a.saving().p50() * a.saving().sure())).toList()) {
            if (suggestions.size() < MOST_SUGGESTIONS
                    && suggestions.stream().noneMatch(s -> alike(s.change(), answer.change()))) {
                suggestions.add(answer);
            }
        }
        return List.copyOf(suggestions);
    }

    /** Of one kind, or of one step. */
    private static boolean alike(Change one, Change other) {
        return one.getClass() == other.getClass() || !Collections.disjoint(one.steps(), other.steps());
    }

    private Otherwise nothing() {
        return new Otherwise(track.seats().size(), track.pourStep() + 1);
    }

    /** When each candle may have been ready: what a hand decided on is known. */
    private Map<Integer, CandleTime> candles(Lots lots) {
        double room = StandardNormal.draw(lots.ofStep(CANDLE));
        Map<Integer, CandleTime> drawn = new TreeMap<>();
        for (int i = 0; i < track.seats().size(); i++) {
            SeatTrack seat = track.seats().get(i);
            CandleTime candle = past.candles().get(seat.seat());
            if (candle != null) {
                drawn.put(seat.seat(), drawn(candle, seat.ready(), room, StandardNormal.draw(lots.of(i, CANDLE))));
            }
        }
        return drawn;
    }

    private static CandleTime drawn(CandleTime candle, ReadyOutlook ready, double room, double own) {
        if (!ready.isKnown()) {
            return candle;
        }
        double at = ready.medianMinutes() + ready.sharedSdMinutes() * room + ready.sdMinutes() * own;
        return new CandleTime(candle.pouredMinutes(), Math.max(candle.pouredMinutes(), at));
    }

    private Otherwise otherwise(Change change, Lots lots, double share) {
        Otherwise other = nothing();
        if (change instanceof Change.MoreHelp) {
            standstills.draw(other.less, lots.ofStep(HELP));
        } else if (change instanceof Change.Free c) {
            other.freed = c.step();
        } else if (change instanceof Change.Led c) {
            SplittableRandom random = lots.ofStep(CHANGED);
            other.led = c.step();
            other.share = share;
            other.lag = lags.isEmpty() ? priors.openings().delayMinutes() : lags.get(random.nextInt(lags.size()));
        } else if (change instanceof Change.Beforehand c) {
            other.left[c.step()] = true;
        } else if (change instanceof Change.MoreStations c) {
            other.atOnce[c.step()] = c.then();
        } else if (change instanceof Change.Earlier c) {
            c.talks().forEach((k, minutes) -> other.sooner[k] = minutes);
            c.openings().forEach((k, minutes) -> other.sooner[k] = minutes);
        } else if (change instanceof Change.SmallerVessels) {
            smaller(other, lots);
        } else {
            throw new IllegalStateException("a change of no known kind: " + change);
        }
        return other;
    }

    private void smaller(Otherwise other, Lots lots) {
        SmallerCandles smaller = past.smaller().orElseThrow();
        SmallerCandles.Drawn drawn = smaller.drawn(lots.ofStep(CHANGED));
        Arrays.setAll(other.cureShare,
                i -> smaller.share(track.seats().get(i).seat(), drawn, lots.of(i, CHANGED)));
    }
}
