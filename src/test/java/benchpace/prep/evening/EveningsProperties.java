package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableTop;
import benchpace.plan.TestPlans;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of all evenings, whatever their chance. */
class EveningsProperties {
    private static final TrajectoryCache CACHE = new TrajectoryCache();
    private static final int COUNT = 300;
    private static final Step WEIGHED = new Step(new StepId("weigh"), "Weigh", StepKind.HANDS_ON, Opening.FREE,
            Duration.ofMinutes(4), Duration.ofMinutes(3), "", "", "", Optional.empty(),
            Optional.of(new Stations(2, "scales", Duration.ofMinutes(2))));

    private static Evenings evenings(Setting setting, long seed) {
        return Evenings.of(setting, seed, COUNT, CACHE, Evenings.Progress.UNTOLD);
    }

    @Property(tries = 40)
    void more_promised_time_never_lowers_the_chance(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int seats,
                                                    @ForAll @DoubleRange(min = 20, max = 300) double promised,
                                                    @ForAll @DoubleRange(min = 0, max = 60) double more) {
        Evenings evenings = evenings(Setting.of(TestPlans.evening(), seats), seed);

        assertThat(evenings.doneBy(promised + more).share()).isGreaterThanOrEqualTo(evenings.doneBy(promised).share());
    }

    /** Where nobody waits for a step to be opened this holds of every single evening. */
    @Property(tries = 40)
    void fewer_seats_are_never_done_later(@ForAll long seed, @ForAll @IntRange(min = 3, max = 30) int seats) {
        Plan free = TestPlans.of(TestPlans.step("wicks", StepKind.HANDS_ON, Opening.FREE, 6), WEIGHED,
                TestPlans.step("pour", StepKind.POUR, Opening.FREE, 10),
                TestPlans.step("cure", StepKind.CURE, Opening.FREE, 60));
        Evenings more = evenings(Setting.of(free, seats), seed);
        Evenings fewer = evenings(Setting.of(free, seats - 2), seed);

        for (int b = 0; b < COUNT; b++) {
            assertThat(fewer.done(b)).isLessThanOrEqualTo(more.done(b));
        }
    }

    /** The number that is waited for jumps with the size of the table: of ten, eight may do; of eight, seven. */
    @Property(tries = 40)
    void with_led_steps_fewer_seats_are_never_done_much_later(@ForAll long seed,
                                                        @ForAll @IntRange(min = 3, max = 30) int seats) {
        Quantiles more = evenings(Setting.of(TestPlans.evening(), seats), seed).timetable().done();
        Quantiles fewer = evenings(Setting.of(TestPlans.evening(), seats - 2), seed).timetable().done();

        assertThat(fewer.p50()).isLessThan(more.p50() + 5);
        assertThat(fewer.p90()).isLessThan(more.p90() + 9);
    }

    @Property(tries = 40)
    void steps_end_one_after_another(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int seats) {
        Timetable timetable = evenings(Setting.of(TestPlans.evening(), seats), seed).timetable();

        assertThat(timetable.steps()).isSortedAccordingTo((a, b) -> Double.compare(a.ends().p50(), b.ends().p50()));
        assertThat(timetable.done()).isEqualTo(timetable.steps().get(timetable.steps().size() - 1).ends());
        assertThat(timetable.lastCandle().orElseThrow().p50()).isLessThan(timetable.done().p50());
    }

    /** Whatever candle a plan may hold: computed, or by the plan's figure where it cannot be. */
    @Property(tries = 40)
    void every_candle_that_can_be_planned_has_its_time(@ForAll @DoubleRange(min = 20, max = 400) double diameter,
                                                       @ForAll @DoubleRange(min = 10, max = 500) double height,
                                                       @ForAll @DoubleRange(min = 1, max = 100_000) double fill,
                                                       @ForAll @DoubleRange(min = -10, max = 45) double room,
                                                       @ForAll @DoubleRange(min = 30, max = 150) double pour,
                                                       @ForAll Vessel.Material material,
                                                       @ForAll @DoubleRange(min = 20, max = 90) double solidus) {
        Wax wax = new Wax("wax", "Wax", 900, 2100, 2200, 120_000, solidus, solidus + 8, 0.2, 0.3, false);
        Candle candle = new Candle("any", "Any", new Vessel("any", "Any", material, diameter, 3, height), wax, fill,
                0.07, room, pour, TableTop.WOOD);
        Plan evening = TestPlans.evening();
        Plan plan = new Plan(evening.id(), "Any", "", "", 6, evening.table(), evening.steps(), List.of(),
                List.of(candle));

        Evenings evenings = Evenings.of(Setting.of(plan, 3), 1, 50, CACHE, Evenings.Progress.UNTOLD);

        assertThat(evenings.timetable().done().p90()).isBetween(0.0, 24 * 60 + 600.0);
        assertThat(WhatWouldHelp.of(evenings, CACHE, Evenings.Progress.UNTOLD)).isNotEmpty()
                .allSatisfy(e -> assertThat(e.savedP90Minutes()).isFinite());
    }
}
