package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import benchpace.pace.forecast.PourDraws;
import benchpace.report.FlagSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What a helper more would have saved each flagged seat: somebody is there {@value #COMES_MINUTES} minutes after its
 * flag, and what holds it up is over {@link PourDraws#HELPED_MINUTES} later, as the price of a flag on the tile has it.
 * Work itself takes as long. How likely a seat was at a standstill at all, and not just slow or not ticked, is what the
 * pace believed of it just before it was done; a standstill began at any moment of the work before the flag, as in the
 * forecast of a running class.
 */
final class Standstills {
    /** From a flag to a helper at the seat who has nothing else to do; from judgement. */
    static final double COMES_MINUTES = 1;
    private static final double JUST_BEFORE = 1e-6;

    private final List<Flagged> flagged = new ArrayList<>();

    /**
     * A seat at a step at which it was flagged.
     *
     * @param i           its place in the track
     * @param stalled     the chance that it was at a standstill
     * @param minutes     how long it was there
     * @param flagMinutes how long it had been there when the flag went up
     * @param mean        of the log of what it would have taken
     */
    private record Flagged(int i, int step, double stalled, double minutes, double flagMinutes, double mean,
                           double sd) {
        double saved(SplittableRandom random) {
            double u = random.nextDouble();
            double worked = random.nextDouble();
            double begun = random.nextDouble();
            if (u >= stalled) {
                return 0;
            }
            double most = StandardNormal.cdf((Math.log(minutes) - mean) / sd);
            double work = Math.min(minutes, Math.exp(mean + sd * StandardNormal.quantile(
                    Math.max(1e-9, Math.min(1 - 1e-9, worked * most)))));
            double over = begun * Math.min(work, flagMinutes) + minutes - work;
            return Math.max(0, over - flagMinutes - COMES_MINUTES - PourDraws.HELPED_MINUTES);
        }
    }

    Standstills(ClassTrack track, PaceEngine engine, ClassTempo tempo, List<FlagSpan> flags) {
        for (int i = 0; i < track.seats().size(); i++) {
            SeatTrack seat = track.seats().get(i);
            for (StepTime time : StepTime.of(track, seat)) {
                int place = i;
                flags.stream().filter(f -> f.seat() == seat.seat() && f.step() == time.step()).findFirst()
                        .filter(f -> !someoneWasThere(seat, f)).filter(f -> f.fromMinutes() < time.toMinutes())
                        .ifPresent(f -> flagged.add(flagged(track, engine, tempo, place, time, f)));
            }
        }
    }

    /** Before a helper more could have been. */
    private static boolean someoneWasThere(SeatTrack seat, FlagSpan flag) {
        return seat.isClaimed(Double.NEGATIVE_INFINITY, flag.fromMinutes() + COMES_MINUTES);
    }

    private static Flagged flagged(ClassTrack track, PaceEngine engine, ClassTempo tempo, int i, StepTime time,
                                   FlagSpan flag) {
        double then = time.toMinutes() - JUST_BEFORE;
        double stalled = engine.judge(track.asOf(then), then, PaceMemory.EMPTY).seats().get(i).stalledProbability();
        ClassTempo.Belief belief = tempo.belief(i, time.step());
        double before = Math.max(0, flag.fromMinutes() - time.fromMinutes());
        return new Flagged(i, time.step(), stalled, Math.max(JUST_BEFORE, time.toMinutes() - time.fromMinutes()),
                before, belief.meanLog(), belief.sdLog());
    }

    /** Minutes saved each seat at each step, in one way in which it may have been. */
    void draw(double[][] less, SplittableRandom random) {
        for (Flagged one : flagged) {
            less[one.i()][one.step()] = one.saved(random);
        }
    }
}
