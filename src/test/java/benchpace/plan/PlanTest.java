package benchpace.plan;

import static benchpace.plan.Opening.FREE;
import static benchpace.plan.Opening.LED;
import static benchpace.plan.StepKind.CURE;
import static benchpace.plan.StepKind.FINISH;
import static benchpace.plan.StepKind.HANDS_ON;
import static benchpace.plan.StepKind.POUR;
import static benchpace.plan.StepKind.TALK;
import static benchpace.plan.TestPlans.activity;
import static benchpace.plan.TestPlans.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanTest {
    private static final Step WICKS = step("wicks", HANDS_ON, FREE, 6);

    private static AbstractThrowableAssert<?, ?> refused(ThrowingCallable making) {
        return assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class);
    }

    private static Plan plan(List<Step> steps, List<Activity> activities) {
        return new Plan(new PlanId("p"), "Plan", "", "", 6, TableShape.ROWS, steps, activities);
    }

    private static Step timed(Duration planned, Duration allowance) {
        return new Step(new StepId("s"), "Step s", HANDS_ON, FREE, planned, allowance, "", "", "");
    }

    @Test void steps_are_found_by_id_and_position() {
        Plan evening = TestPlans.evening();

        assertThat(evening.indexOf(new StepId("pour"))).isEqualTo(3);
        assertThat(evening.pour()).map(s -> s.id().value()).contains("pour");
        assertThat(evening.cure()).map(s -> s.id().value()).contains("cure");
        assertThat(evening.step(new StepId("glaze"))).isEmpty();
        assertThat(evening.activity(new ActivityId("labels"))).isPresent();
        refused(() -> evening.indexOf(new StepId("glaze"))).hasMessageContaining("glaze");
    }

    @Test void the_planned_length_is_the_sum_of_the_steps() {
        assertThat(TestPlans.evening().planned()).isEqualTo(Duration.ofMinutes(5 + 6 + 8 + 10 + 60 + 6 + 5));
    }

    @Test void a_class_pours_once_and_cures_once_after_it() {
        Step pour = step("pour", POUR, LED, 10);
        Step cure = step("cure", CURE, FREE, 60);

        refused(() -> TestPlans.of(pour, step("pour-more", POUR, FREE, 5))).hasMessageContaining("pour-more");
        refused(() -> TestPlans.of(WICKS, cure)).hasMessageContaining("before anything was poured");
        refused(() -> TestPlans.of(pour, cure, step("cure-more", CURE, FREE, 5))).hasMessageContaining("cure-more");
        refused(() -> TestPlans.of(WICKS, step("trim", FINISH, FREE, 5))).hasMessageContaining("trim");
        refused(() -> TestPlans.of(pour, cure, WICKS)).hasMessageContaining("finish step");
        assertThat(TestPlans.of(pour, WICKS, cure, step("trim", FINISH, FREE, 5)).steps()).hasSize(4);
    }

    @Test void a_plan_has_something_for_the_seats_to_do() {
        refused(() -> TestPlans.of(step("welcome", TALK, LED, 5))).hasMessageContaining("no step is done by the seats");
        refused(() -> plan(List.of(), List.of())).hasMessageContaining("1 to 30 steps");
    }

    @Test void a_plan_is_not_endless() {
        List<Step> steps = IntStream.rangeClosed(1, 31).mapToObj(i -> step("s" + i, HANDS_ON, FREE, 1)).toList();
        List<Activity> activities = IntStream.rangeClosed(1, 21)
                .mapToObj(i -> activity("a" + i, ActivityKind.BROWSING, 5, 2)).toList();

        refused(() -> plan(steps, List.of())).hasMessageContaining("31");
        refused(() -> plan(List.of(WICKS), activities)).hasMessageContaining("20 activities");
        assertThat(plan(steps.subList(0, 30), activities.subList(0, 20)).steps()).hasSize(30);
    }

    @Test void no_two_things_have_one_name() {
        refused(() -> TestPlans.of(WICKS, WICKS)).hasMessageContaining("step \"wicks\"");
        Activity labels = activity("labels", ActivityKind.LABELS, 5, 2);
        refused(() -> plan(List.of(WICKS), List.of(labels, labels))).hasMessageContaining("activity \"labels\"");
    }

    @Test void ids_are_short_plain_and_safe_in_an_address() {
        for (String wrong : new String[] {"", "Wicks", "-wicks", "two words", "a/b", "ä", "x".repeat(41), null}) {
            refused(() -> new StepId(wrong)).hasMessageContaining("id of a step");
            refused(() -> new ActivityId(wrong)).hasMessageContaining("id of an activity");
            refused(() -> new PlanId(wrong)).hasMessageContaining("id of a plan");
        }
        assertThat(new StepId("2nd-pour")).hasToString("2nd-pour");
    }

    @Test void a_place_card_shows_1_to_60() {
        refused(() -> new SeatNumber(0));
        refused(() -> new SeatNumber(61));
        assertThat(new SeatNumber(60).compareTo(new SeatNumber(9))).isPositive();
    }

    @Test void lengths_and_allowances_are_within_reason() {
        refused(() -> timed(Duration.ZERO, Duration.ZERO)).hasMessageContaining("Step s");
        refused(() -> timed(Duration.ofMinutes(481), Duration.ZERO));
        refused(() -> timed(Duration.ofMinutes(5), Duration.ofMinutes(-1))).hasMessageContaining("allowance");
        refused(() -> timed(Duration.ofMinutes(5), Duration.ofMinutes(121)));
        assertThat(timed(Duration.ofMinutes(480), Duration.ofMinutes(120)).planned()).hasHours(8);
    }

    @Test void texts_are_given_short_and_without_control_characters() {
        for (String wrong : new String[] {null, "", "  ", "x".repeat(61), "a\u0007b", "a\tb"}) {
            refused(() -> new Step(new StepId("s"), wrong, HANDS_ON, FREE, Duration.ofMinutes(5), Duration.ZERO, "", "",
                    "")).hasMessageContaining("the name of a step");
        }
        refused(() -> new Step(new StepId("s"), "S", HANDS_ON, FREE, Duration.ofMinutes(5), Duration.ZERO,
                "x".repeat(401), "", "")).hasMessageContaining("the cue");
    }

    @Test void what_is_missing_is_named() {
        Duration five = Duration.ofMinutes(5);

        refused(() -> new Step(null, "S", HANDS_ON, FREE, five, five, "", "", "")).hasMessageContaining("the id");
        refused(() -> new Step(new StepId("s"), "S", null, FREE, five, five, "", "", ""))
                .hasMessageContaining("the kind of \"S\"");
        refused(() -> new Step(new StepId("s"), "S", HANDS_ON, null, five, five, "", "", ""))
                .hasMessageContaining("the opening of \"S\"");
        refused(() -> timed(five, null)).hasMessageContaining("the allowance");
        refused(() -> timed(null, five)).hasMessageContaining("the planned length");
        refused(() -> plan(null, List.of())).hasMessageContaining("the list of steps");
        refused(() -> plan(List.of(WICKS), null)).hasMessageContaining("the list of activities");
        refused(() -> plan(Collections.singletonList(null), List.of())).hasMessageContaining("a step");
    }

    @Test void the_longest_length_of_an_activity_is_not_below_its_typical_one() {
        refused(() -> new Activity(new ActivityId("a"), "A", ActivityKind.LABELS, Activity.Audience.OWN_PACE,
                Duration.ofMinutes(10), Duration.ofMinutes(9), 2, Set.of(), true, "", "", "", ""))
                .hasMessageContaining("below its typical");
        refused(() -> activity("a", ActivityKind.LABELS, 5, 0)).hasMessageContaining("places");
        refused(() -> activity("a", ActivityKind.LABELS, 5, 61)).hasMessageContaining("places");
    }
}
