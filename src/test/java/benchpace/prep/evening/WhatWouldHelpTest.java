package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.PlanVariants;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatWouldHelpTest {
    private static final TrajectoryCache CACHE = new TrajectoryCache();
    /** About every other evening is on time. */
    private static final Setting SETTING = Setting.of(TestPlans.evening(), 6).withPromisedMinutes(140);
    private static final Evenings BASE = evenings(SETTING);
    private static final List<Effect> EFFECTS = WhatWouldHelp.of(BASE, CACHE, Evenings.Progress.UNTOLD);

    private static Evenings evenings(Setting setting) {
        return Evenings.of(setting, 1, Evenings.USUAL, CACHE, Evenings.Progress.UNTOLD);
    }

    private static Optional<Effect> find(List<Effect> effects, Class<? extends Change> kind) {
        return effects.stream().filter(e -> kind.isInstance(e.change())).findFirst();
    }

    private static Effect effect(Class<? extends Change> kind) {
        return find(EFFECTS, kind).orElseThrow();
    }

    @Test void what_helps_most_comes_first() {
        assertThat(EFFECTS).isSortedAccordingTo((a, b) -> Double.compare(b.gained(), a.gained()));
    }

    @Test void every_change_that_applies_is_tried() {
        assertThat(EFFECTS).extracting(e -> e.change().getClass().getSimpleName()).containsExactlyInAnyOrder(
                "FewerSeats", "MoreHelp", "Led", "Free", "Beforehand", "OtherCandle", "CoolerPour", "Longer");
    }

    /** Gain and chance are those of two simulations told apart; the paired error is the smaller one. */
    @Test void a_gain_is_the_difference_of_the_chances_and_surer_than_either() {
        for (Effect e : EFFECTS) {
            assertThat(e.gained()).isCloseTo(e.onTime().share() - BASE.timetable().onTime().share(), within(1e-9));
            assertThat(e.gainedError()).isLessThan(Math.hypot(e.onTime().standardError(),
                    BASE.timetable().onTime().standardError()));
        }
    }

    @Test void wicks_set_before_the_guests_come_save_about_what_their_step_takes() {
        Effect e = effect(Change.Beforehand.class);

        assertThat(((Change.Beforehand) e.change()).step()).isEqualTo(new StepId("wicks"));
        assertThat(e.savedP50Minutes()).isBetween(6.0, 16.0);
        assertThat(e.verdict()).isEqualTo(Effect.Verdict.HELPS);
    }

    @Test void less_wax_and_a_cooler_pour_set_sooner() {
        assertThat(effect(Change.OtherCandle.class).change()).isEqualTo(new Change.OtherCandle(TestPlans.CANDLE));
        assertThat(effect(Change.OtherCandle.class).savedP50Minutes()).isGreaterThan(2);
        assertThat(effect(Change.CoolerPour.class).savedP50Minutes()).isBetween(0.5, 10.0);
    }

    @Test void where_the_plan_has_no_smaller_candle_the_vessels_are_made_smaller() {
        Evenings smallest = evenings(SETTING.withCandles(Collections.nCopies(6, TestPlans.CANDLE)));

        Effect e = find(WhatWouldHelp.of(smallest, CACHE, Evenings.Progress.UNTOLD), Change.SmallerVessels.class)
                .orElseThrow();

        assertThat(e.savedP50Minutes()).isGreaterThan(2);
    }

    @Test void a_longer_promise_saves_no_minute_and_is_kept_more_often() {
        Effect e = effect(Change.Longer.class);

        assertThat(e.savedP50Minutes()).isZero();
        assertThat(e.onTime()).isEqualTo(BASE.doneBy(155));
        assertThat(e.gained()).isGreaterThan(0.05);
    }

    @Test void a_free_step_that_is_led_makes_nobody_earlier() {
        Effect e = effect(Change.Led.class);

        assertThat(e.savedP50Minutes()).isLessThanOrEqualTo(0);
        assertThat(e.verdict()).isNotEqualTo(Effect.Verdict.HELPS);
    }

    @Test void fewer_seats_and_more_help_never_hurt() {
        assertThat(effect(Change.FewerSeats.class).savedP50Minutes()).isGreaterThan(0);
        assertThat(effect(Change.MoreHelp.class).savedP90Minutes()).isGreaterThan(0);
    }

    @Test void a_second_tap_halves_the_line() {
        Step pour = new Step(new StepId("pour"), "Pour", StepKind.POUR, Opening.LED, Duration.ofMinutes(4),
                Duration.ofMinutes(3), "", "", "", Optional.empty(),
                Optional.of(new Stations(1, "tap", Duration.ofMinutes(4))));
        Evenings line = evenings(Setting.of(new Plan(new PlanId("line"), "Line", "", "", 12, TableShape.ROWS,
                List.of(pour), List.of()), 12));

        Effect e = find(WhatWouldHelp.of(line, CACHE, Evenings.Progress.UNTOLD), Change.MoreStations.class)
                .orElseThrow();

        assertThat(e.change()).isEqualTo(new Change.MoreStations(new StepId("pour"), 2));
        assertThat(e.savedP50Minutes()).isBetween(15.0, 30.0);
    }

    @Test void what_does_not_apply_is_left_out() {
        Plan plan = new Plan(new PlanId("small"), "Small", "", "", 2, TableShape.ROWS,
                List.of(TestPlans.step("fold", StepKind.HANDS_ON, Opening.LED, 10)), List.of());

        assertThat(WhatWouldHelp.of(evenings(Setting.of(plan, 2)), CACHE, Evenings.Progress.UNTOLD))
                .extracting(e -> e.change().getClass().getSimpleName())
                .containsExactlyInAnyOrder("MoreHelp", "Longer");
    }

    /** Hot wax keeps its cue: a step that could hurt, and the pour, are never proposed to go unled. */
    @Test void a_step_that_could_hurt_stays_led() {
        Step hot = new Step(new StepId("mix"), "Mix", StepKind.HANDS_ON, Opening.LED, Duration.ofMinutes(9),
                Duration.ofMinutes(3), "", "Hot.", "");
        Plan plan = TestPlans.of(TestPlans.step("wicks", StepKind.HANDS_ON, Opening.LED, 6), hot,
                TestPlans.step("pour", StepKind.POUR, Opening.LED, 10));

        assertThat(find(WhatWouldHelp.of(evenings(Setting.of(plan, 3)), CACHE, Evenings.Progress.UNTOLD),
                Change.Free.class)).isEmpty();
    }

    @Test void the_smallest_candle_is_made_no_smaller() {
        Candle small = TestPlans.evening().candles().get(0);

        assertThat(PlanVariants.smaller(withFill(small, 1.2), 0.75)).isEmpty();
        assertThat(PlanVariants.smaller(withFill(small, 2), 0.75)).map(Candle::fillGrams).contains(1.5);
    }

    private static Candle withFill(Candle c, double grams) {
        return new Candle(c.id(), c.name(), c.vessel(), c.wax(), grams, c.fragranceFraction(), c.roomCelsius(),
                c.pourCelsius(), c.tableTop());
    }

    @Test void progress_counts_the_evenings_of_all_changes() {
        List<Integer> told = new ArrayList<>();
        Evenings few = Evenings.of(SETTING, 1, 50, CACHE, Evenings.Progress.UNTOLD);

        WhatWouldHelp.of(few, CACHE, (done, of) -> {
            told.add(done);
            assertThat(done).isLessThanOrEqualTo(of);
        });

        assertThat(told).isSorted().doesNotHaveDuplicates();
        assertThat(told.get(told.size() - 1) % 50).isZero();
    }
}
