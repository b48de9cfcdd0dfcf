package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;
import benchpace.report.FlagHistory;
import benchpace.report.FlagSpan;
import benchpace.report.StepSummary;
import benchpace.report.whatif.EnactedClass.Cast;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Classes of which both are known, what was recorded and what would have happened otherwise with the same people: work,
 * stalls, openings and cures are drawn from a seed and kept, ticks come late and in sweeps. Truth is the class played
 * out once more, event by event, with the change made.
 */
final class InventedClasses {
    private static final double STALL_ODDS = 0.04;
    private static final double SWEEP_MINUTES = 2.5;

    private final SplittableRandom random;
    private final int seats;
    private final Plan plan;
    private final Cast cast;
    private final double[][] stallBegins;
    private final double[][] stallLasts;
    private final double share;
    private final EnactedClass truth;
    private final Past past;

    InventedClasses(long seed, int seats) {
        this.random = new SplittableRandom(seed);
        this.seats = seats;
        this.plan = plan();
        this.share = new double[] {0.82, 0.9, 1}[random.nextInt(3)];
        this.stallBegins = new double[seats][plan.steps().size()];
        this.stallLasts = new double[seats][plan.steps().size()];
        this.cast = cast();
        this.truth = new EnactedClass(cast);
        ClassTrack track = truth.track(lateness());
        PaceEngine engine = new PaceEngine(PacePriors.standard());
        double end = track.moments().get(track.moments().size() - 1);
        List<FlagSpan> flags = FlagHistory.of(track, engine, end);
        this.past = new Past(plan, track, truth.candles(track), engine, flags, StepSummary.of(track),
                Optional.empty());
    }

    private static Plan plan() {
        return TestPlans.served(TestPlans.of(
                TestPlans.step("welcome", StepKind.TALK, Opening.LED, 6),
                TestPlans.step("vessel", StepKind.HANDS_ON, Opening.FREE, 3),
                TestPlans.step("wicks", StepKind.HANDS_ON, Opening.LED, 6),
                TestPlans.step("fragrance", StepKind.HANDS_ON, Opening.FREE, 5),
                TestPlans.step("blend", StepKind.HANDS_ON, Opening.LED, 8),
                TestPlans.step("pour", StepKind.POUR, Opening.LED, 4)), "fragrance",
                new Stations(2, "scales", Duration.ofMinutes(2)));
    }

    private Cast cast() {
        List<PaceStep> steps = plan.steps().stream().map(PaceStep::of).toList();
        double tempo = 0.2 * StandardNormal.draw(random);
        double[] guests = random.doubles(seats).map(u -> 0.22 * StandardNormal.quantile(Math.max(1e-6, u))).toArray();
        double[][] work = new double[seats][steps.size()];
        int[] few = new int[steps.size()];
        double[] lag = new double[steps.size()];
        for (int k = 0; k < steps.size(); k++) {
            double own = tempo + 0.2 * StandardNormal.draw(random);
            for (int i = 0; i < seats; i++) {
                double minutes = steps.get(k).planMinutes()
                        * Math.exp(own + guests[i] + 0.28 * StandardNormal.draw(random));
                if (random.nextDouble() < STALL_ODDS && k > 0) {
                    stallBegins[i][k] = minutes * random.nextDouble();
                    stallLasts[i][k] = 5 + 15 * random.nextDouble();
                }
                work[i][k] = minutes + stallLasts[i][k];
            }
            few[k] = seats - (int) Math.ceil(share * seats - 1e-9);
            lag[k] = 0.4 + 1.5 * random.nextDouble() + (random.nextInt(4) == 0 ? 5 * random.nextDouble() : 0);
        }
        double[] cure = random.doubles(seats).map(u -> 55 + 12 * u).toArray();
        return new Cast(steps, new double[seats], work, few, lag, cure);
    }

    /** Half of the ticks at once, the others at one of the next sweeps. */
    private double[][] lateness() {
        double[][] late = new double[seats][cast.steps().size()];
        for (int i = 0; i < seats; i++) {
            for (int k = 0; k < late[i].length; k++) {
                if (random.nextDouble() < 0.5) {
                    late[i][k] = 0.05 + 0.3 * random.nextDouble();
                } else {
                    double done = truth.done[i][k];
                    double sweep = Math.ceil(done / SWEEP_MINUTES) + (random.nextInt(5) == 0 ? 1 : 0);
                    late[i][k] = SWEEP_MINUTES * sweep + i * 0.005 - done;
                }
            }
        }
        return late;
    }

    Past past() {
        return past;
    }

    /** By how much earlier the last candle would really have been ready. */
    double saved(Change change) {
        return truth.lastReady() - new EnactedClass(changed(change)).lastReady();
    }

    private Cast changed(Change change) {
        List<PaceStep> steps = new ArrayList<>(cast.steps());
        if (change instanceof Change.MoreHelp) {
            return cast.withWork(helped());
        } else if (change instanceof Change.Free c) {
            steps.set(c.step(), with(steps.get(c.step()), false));
        } else if (change instanceof Change.Led c) {
            steps.set(c.step(), with(steps.get(c.step()), true));
        } else if (change instanceof Change.Beforehand c) {
            return cast.without(c.step());
        } else if (change instanceof Change.MoreStations c) {
            PaceStep was = steps.get(c.step());
            steps.set(c.step(), new PaceStep(was.id(), was.planMinutes(), was.led(), was.kind(),
                    Optional.of(new PaceStations(c.then(), was.stations().orElseThrow().eachMinutes()))));
        } else if (change instanceof Change.Earlier c) {
            double[] lag = cast.lag().clone();
            c.openings().forEach((k, minutes) -> lag[k] = Math.max(0, lag[k] - minutes));
            c.talks().forEach((k, minutes) -> {
                PaceStep was = steps.get(k);
                steps.set(k, new PaceStep(was.id(), was.planMinutes() - minutes, was.led(), was.kind()));
            });
            return cast.withSteps(steps).withLag(lag);
        }
        return cast.withSteps(steps);
    }

    private static PaceStep with(PaceStep s, boolean led) {
        return new PaceStep(s.id(), s.planMinutes(), led, s.kind(), s.stations());
    }

    /** Somebody is there a minute after the flag, and a standstill that still lasts is over a minute later. */
    private double[][] helped() {
        double[][] work = new double[seats][];
        for (int i = 0; i < seats; i++) {
            work[i] = cast.work()[i].clone();
            for (int k = 0; k < work[i].length; k++) {
                int seat = i + 1;
                int step = k;
                double begun = truth.done[i][k] - work[i][k];
                double over = begun + stallBegins[i][k] + stallLasts[i][k];
                Optional<FlagSpan> flag = past.flags().stream().filter(f -> f.seat() == seat && f.step() == step)
                        .findFirst();
                if (flag.isPresent() && stallLasts[i][k] > 0) {
                    double helped = Math.max(flag.get().fromMinutes() + 2, begun + stallBegins[i][k]);
                    work[i][k] -= Math.max(0, over - helped);
                }
            }
        }
        return work;
    }
}
