package benchpace.prep.evening;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.forecast.LatestDone;
import benchpace.pace.forecast.Lots;
import benchpace.pace.forecast.StationQueue;
import benchpace.pace.forecast.StepDraws;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;

/**
 * The way of a table through a plan on one evening, by the pace model of the live board: class, step and guest speeds,
 * stalls, led steps that open once most of the table is through. What the board does not forecast yet goes by the same
 * law: steps after the pour, which run while the candle sets, and finish steps, which wait for it.
 *
 * <p>Where stations serve a step, a seat that comes waits for its turn, first come, first served, and keeps its station
 * for the same share of its time as in the plan, a stall counted in.
 */
final class Course {
    /** Key of the chance that a candle has, where a step has its id's. */
    private static final int CANDLE = -2;

    private static final BiConsumer<Integer, double[]> UNSEEN = (step, at) -> { };

    private final List<Step> steps;
    private final PacePriors priors;
    private final OpeningHabit openings;
    private final Cures cures;
    private final Leg[] legs;
    private final int seats;

    // one evening
    private final double[] guest;
    private final double[] at;
    private final double[] ready;
    private final double[] work;
    private final double[] keeps;
    private final LatestDone latest;
    private double opening;

    /** @param key of its chance; @param keptShare of its work at a station */
    private record Leg(Step step, int key, double planMinutes, double logPlan, double stepSd, double noiseSd,
                       double keptShare) {
        static Leg of(Step step, PacePriors priors) {
            PaceStep pace = PaceStep.of(step);
            double kept = step.stations().map(s -> s.each().toMillis() / (double) step.planned().toMillis())
                    .orElse(0.0);
            return new Leg(step, step.id().value().hashCode(), pace.planMinutes(),
                    Math.log(pace.planMinutes()) + priors.stepPrior(pace).meanLogShift(),
                    Math.sqrt(priors.stepPrior(pace).variance()), Math.sqrt(priors.noiseVariance(pace)), kept);
        }
    }

    Course(Setting setting, Cures cures) {
        this.steps = setting.plan().steps();
        this.priors = setting.beliefs().pace();
        this.cures = cures;
        this.seats = setting.seats();
        this.legs = steps.stream().map(step -> Leg.of(step, priors)).toArray(Leg[]::new);
        this.openings = habit();
        this.guest = new double[seats];
        this.at = new double[seats];
        this.ready = new double[seats];
        this.work = new double[seats];
        this.keeps = new double[seats];
        this.latest = new LatestDone(seats);
    }

    /** Of a class that has not begun. */
    private OpeningHabit habit() {
        List<PaceStep> pace = steps.stream().map(PaceStep::of).toList();
        List<Double> closed = Collections.nCopies(pace.size(), SeatTrack.NOT_YET);
        return OpeningHabit.of(new ClassTrack(pace, closed, 0, List.of()), List.of(), 0, priors);
    }

    /**
     * One evening.
     *
     * @param ends  filled with the minute at which the last seat is through with each step
     * @param waits filled with the longest wait for a turn at each step, minutes
     * @return when the last candle may be handled; 0 if nothing is poured
     */
    double walk(Lots lots, double[] ends, double[] waits) {
        return walk(lots, ends, waits, UNSEEN);
    }

    /** The same, with every seat watched. @param passed told of each step with the minute at which each seat is done */
    double walk(Lots lots, double[] ends, double[] waits, BiConsumer<Integer, double[]> passed) {
        SplittableRandom shared = lots.ofClass();
        double tempo = Math.sqrt(priors.times().classVariance()) * StandardNormal.draw(shared);
        double share = openings.draw(shared.nextDouble());
        Cures.Evening room = cures.evening(shared);
        double guestSd = Math.sqrt(priors.times().guestVariance());
        for (int i = 0; i < seats; i++) {
            guest[i] = guestSd * StandardNormal.draw(lots.ofSeat(i));
        }
        Arrays.fill(at, 0);
        Arrays.fill(ready, 0);
        opening = 0;
        for (int k = 0; k < legs.length; k++) {
            if (legs[k].step().led()) {
                open(share);
            }
            waits[k] = 0;
            pass(legs[k], tempo, room, lots, waits, k);
            ends[k] = latest(at);
            passed.accept(k, at);
        }
        return latest(ready);
    }

    /** A led step opens once most of the table is through with the one before; nobody starts earlier. */
    private void open(double share) {
        latest.clear(OpeningHabit.missing(share, seats));
        for (double done : at) {
            latest.add(done);
        }
        opening = Math.max(opening, latest.allButMissing()) + priors.openings().delayMinutes();
        for (int i = 0; i < seats; i++) {
            at[i] = Math.max(at[i], opening);
        }
    }

    private void pass(Leg leg, double tempo, Cures.Evening room, Lots lots, double[] waits, int k) {
        switch (leg.step().kind()) {
            case TALK -> {
                for (int i = 0; i < seats; i++) {
                    at[i] += leg.planMinutes();
                }
            }
            case CURE -> {
                for (int i = 0; i < seats; i++) {
                    at[i] = Math.max(at[i], ready[i]);
                }
            }
            case HANDS_ON, POUR, FINISH -> {
                double mean = leg.logPlan() + tempo + leg.stepSd() * StandardNormal.draw(lots.ofStep(leg.key()));
                waits[k] = work(leg, mean, lots);
                if (leg.step().kind() == StepKind.POUR) {
                    pour(room, lots);
                }
            }
        }
    }

    /** Everybody works at it; the longest wait for a turn. */
    private double work(Leg leg, double mean, Lots lots) {
        double longest = 0;
        for (int i = 0; i < seats; i++) {
            SplittableRandom own = lots.of(i, leg.key());
            double minutes = StepDraws.work(mean + guest[i], leg.noiseSd(), own);
            work[i] = minutes + StepDraws.stall(priors.stalls(), own);
            keeps[i] = leg.keptShare() * work[i];
        }
        if (leg.step().stations().isPresent()) {
            double[] turns = StationQueue.turns(leg.step().stations().get().atOnce(), at, keeps);
            for (int i = 0; i < seats; i++) {
                longest = Math.max(longest, turns[i] - at[i]);
                at[i] = turns[i];
            }
        }
        for (int i = 0; i < seats; i++) {
            at[i] += work[i];
        }
        return longest;
    }

    private void pour(Cures.Evening room, Lots lots) {
        for (int i = 0; i < seats; i++) {
            SplittableRandom own = lots.of(i, CANDLE);
            ready[i] = at[i] + cures.minutes(room, i, own);
        }
    }

    private static double latest(double[] moments) {
        double latest = 0;
        for (double moment : moments) {
            latest = Math.max(latest, moment);
        }
        return latest;
    }
}
