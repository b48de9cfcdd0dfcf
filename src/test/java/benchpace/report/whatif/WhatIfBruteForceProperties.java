package benchpace.report.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.WorkKind;
import benchpace.report.whatif.EnactedClass.Cast;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/**
 * What would have been, held to classes that are played out event by event with the change made. Their instructor opens
 * a step some time after all are ready, or at once when all but a few are: of one who opens some time after all but a
 * few are ready a record does not tell for whom it was that he waited.
 */
class WhatIfBruteForceProperties {
    private static final double ROUNDING = 1e-6;
    private static final int TRIES = 400;

    /** Two to five seats, a talk, two to four steps led or free, and a pour; somebody may come late. */
    private static Cast cast(SplittableRandom random, boolean stations) {
        int seats = 2 + random.nextInt(4);
        List<PaceStep> steps = new ArrayList<>(List.of(new PaceStep("welcome", 2 + random.nextInt(6), true,
                WorkKind.TALK)));
        int between = 2 + random.nextInt(3);
        for (int k = 1; k <= between; k++) {
            boolean talk = !stations && k > 1 && random.nextInt(6) == 0;
            double plan = 3 + random.nextInt(8);
            Optional<PaceStations> served = stations && !talk && random.nextInt(2) == 0
                    ? Optional.of(new PaceStations(1 + random.nextInt(2), plan)) : Optional.empty();
            boolean led = random.nextBoolean() || steps.get(k - 1).kind() == WorkKind.TALK;
            steps.add(new PaceStep("step-" + k, plan, led,
                    talk ? WorkKind.TALK : WorkKind.HANDS_ON, served));
        }
        boolean led = random.nextInt(4) > 0 || steps.get(between).kind() == WorkKind.TALK;
        steps.add(new PaceStep("pour", 4, led, WorkKind.POUR));
        double[] arrives = new double[seats];
        if (random.nextInt(3) == 0) {
            arrives[0] = 12 * random.nextDouble();
        }
        double[][] work = new double[seats][steps.size()];
        double[] cure = new double[seats];
        for (int i = 0; i < seats; i++) {
            cure[i] = 50 + 20 * random.nextDouble();
            for (int k = 0; k < steps.size(); k++) {
                work[i][k] = steps.get(k).planMinutes() * (0.6 + random.nextDouble());
            }
        }
        int[] few = new int[steps.size()];
        double[] lag = new double[steps.size()];
        for (int k = 0; k < few.length; k++) {
            few[k] = k == 0 ? seats : random.nextInt(seats);
            lag[k] = few[k] == 0 || k == 0 ? 3 * random.nextDouble() : 0;
        }
        return new Cast(steps, arrives, work, few, lag, cure);
    }

    private static Cast cast(long seed, boolean stations) {
        return cast(new SplittableRandom(seed), stations).asStrictAsItShows();
    }

    private static ClassTrack prompt(Cast cast, EnactedClass enacted) {
        return enacted.track(new double[cast.seats()][cast.steps().size()]);
    }

    private static Reenactment learned(Cast cast) {
        EnactedClass enacted = new EnactedClass(cast);
        ClassTrack track = prompt(cast, enacted);
        return new Reenactment(track, TickedTimes.of(track), enacted.candles(track));
    }

    private static Otherwise nothing(Cast cast) {
        return new Otherwise(cast.seats(), cast.steps().size());
    }

    private static void same(Reenactment.Played played, Cast changed) {
        double[] ready = new EnactedClass(changed).ready();
        for (int i = 0; i < ready.length; i++) {
            assertThat(played.ready()[i]).as("candle of seat " + (i + 1)).isCloseTo(ready[i], within(ROUNDING));
        }
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void with_nothing_otherwise_it_is_what_happened(@ForAll @LongRange(min = 0, max = 1_000_000) long seed,
                                                    @ForAll boolean stations) {
        Cast cast = cast(seed, stations);
        EnactedClass enacted = new EnactedClass(cast);
        Reenactment.Played played = learned(cast).played(nothing(cast));
        for (int i = 0; i < cast.seats(); i++) {
            for (int k = 0; k < cast.steps().size(); k++) {
                if (cast.steps().get(k).kind() != WorkKind.TALK) {
                    assertThat(played.done()[i][k]).isCloseTo(enacted.done[i][k], within(ROUNDING));
                }
            }
        }
        same(played, cast);
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void a_step_done_beforehand(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, false);
        int step = 1 + (int) (seed % (cast.steps().size() - 2));
        Assume.that(cast.steps().get(step).kind() == WorkKind.HANDS_ON && cast.arrives()[0] == 0);
        Otherwise other = nothing(cast);
        other.left[step] = true;
        same(learned(cast).played(other), cast.without(step));
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void a_led_step_that_is_free(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, false);
        int step = 1 + (int) (seed % (cast.steps().size() - 2));
        PaceStep was = cast.steps().get(step);
        Assume.that(was.led() && was.kind() == WorkKind.HANDS_ON && cast.arrives()[0] == 0
                && cast.steps().stream().skip(1).noneMatch(s -> s.kind() == WorkKind.TALK));
        Otherwise other = nothing(cast);
        other.freed = step;
        List<PaceStep> steps = new ArrayList<>(cast.steps());
        steps.set(step, new PaceStep(was.id(), was.planMinutes(), false, was.kind()));
        same(learned(cast).played(other), cast.withSteps(steps));
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void a_free_step_that_is_led(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, false);
        int step = 1 + (int) (seed % (cast.steps().size() - 2));
        PaceStep was = cast.steps().get(step);
        Assume.that(!was.led() && was.kind() == WorkKind.HANDS_ON && cast.arrives()[0] == 0
                && cast.steps().stream().skip(1).noneMatch(s -> s.kind() == WorkKind.TALK));
        Otherwise other = nothing(cast);
        other.led = step;
        other.share = 1;
        other.lag = cast.lag()[step];
        List<PaceStep> steps = new ArrayList<>(cast.steps());
        steps.set(step, new PaceStep(was.id(), was.planMinutes(), true, was.kind()));
        Cast changed = cast.withSteps(steps);
        changed.few()[step] = 0;
        same(learned(cast).played(other), changed);
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void a_seat_that_was_helped(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, false);
        Assume.that(cast.arrives()[0] == 0);
        int step = 1 + (int) (seed % (cast.steps().size() - 1));
        int seat = (int) (seed % cast.seats());
        Otherwise other = nothing(cast);
        other.less[seat][step] = 0.7 * cast.work()[seat][step];
        Assume.that(cast.steps().get(step).kind() != WorkKind.TALK);
        Reenactment learned = learned(cast);
        double[][] work = cast.work().clone();
        work[seat] = work[seat].clone();
        work[seat][step] *= 0.3;
        same(learned.played(other), cast.withWork(work));
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void a_station_more(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, true);
        int step = 1 + (int) (seed % (cast.steps().size() - 2));
        PaceStep was = cast.steps().get(step);
        Assume.that(was.stations().isPresent() && cast.arrives()[0] == 0);
        int then = was.stations().get().atOnce() + 1;
        Otherwise other = nothing(cast);
        other.atOnce[step] = then;
        List<PaceStep> steps = new ArrayList<>(cast.steps());
        steps.set(step, new PaceStep(was.id(), was.planMinutes(), was.led(), was.kind(),
                Optional.of(new PaceStations(then, was.stations().get().eachMinutes()))));
        same(learned(cast).played(other), cast.withSteps(steps));
    }

    @Property(tries = TRIES, maxDiscardRatio = 30)
    void an_opening_that_comes_sooner(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, false);
        int step = 1 + (int) (seed % (cast.steps().size() - 1));
        Assume.that(cast.steps().get(step).led() && cast.steps().get(step).kind() != WorkKind.TALK
                && cast.arrives()[0] == 0);
        Reenactment learned = learned(cast);
        double sooner = 0.5 * learned.lag(step);
        Otherwise other = nothing(cast);
        other.sooner[step] = sooner;
        double[] lag = cast.lag().clone();
        lag[step] = learned.lag(step) - sooner;
        Assume.that(Math.abs(learned.lag(step) - cast.lag()[step]) < ROUNDING);
        same(learned.played(other), cast.withLag(lag));
    }

    @Property(tries = 100)
    void what_a_candle_takes_less_it_is_ready_earlier(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cast cast = cast(seed, true);
        Otherwise other = nothing(cast);
        other.cureShare[0] = 0.6;
        double[] cure = cast.cure().clone();
        cure[0] *= 0.6;
        same(learned(cast).played(other), new Cast(cast.steps(), cast.arrives(), cast.work(), cast.few(),
                cast.lag(), cure));
    }
}
