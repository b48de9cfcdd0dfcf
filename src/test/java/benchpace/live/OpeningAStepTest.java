package benchpace.live;

import static benchpace.plan.Opening.FREE;
import static benchpace.plan.Opening.LED;
import static benchpace.plan.StepKind.HANDS_ON;
import static benchpace.plan.StepKind.POUR;
import static benchpace.plan.StepKind.TALK;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.Plan;
import benchpace.plan.StepId;
import benchpace.plan.TestPlans;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OpeningAStepTest {
    private static ClassEvent opened(String step) {
        return new ClassEvent.StepOpened(new StepId(step));
    }

    @Test void only_led_steps_are_opened_and_only_once() {
        TestClass c = TestClass.evening(2).open("welcome").open("wicks");

        assertThat(c.refusalOf(opened("blend"))).isEqualTo(new Refusal.StepIsFree(new StepId("blend")));
        assertThat(c.refusalOf(opened("wicks"))).isEqualTo(new Refusal.AlreadySo(State.OPEN));
        assertThat(c.refusalOf(opened("glaze"))).isEqualTo(new Refusal.NoSuchStep(new StepId("glaze")));
    }

    @Test void a_talk_may_be_left_out_but_no_other_led_step() {
        TestClass c = TestClass.evening(2).open("wicks");

        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.refusalOf(opened("trim")))
                .isEqualTo(new Refusal.OutOfOrder(new StepId("trim"), new StepId("pour")));
    }

    @Test void the_next_led_step_is_the_one_behind_the_furthest_open_one() {
        TestClass c = TestClass.evening(2);
        assertThat(c.live().nextLed().orElseThrow().id().value()).isEqualTo("welcome");

        c.open("wicks");
        assertThat(c.live().nextLed().orElseThrow().id().value()).isEqualTo("pour");

        c.open("pour").open("trim");
        assertThat(c.live().nextLed()).isEmpty();
    }

    @Test void before_anything_is_open_everybody_waits_for_the_first_step_from_the_start_of_the_class() {
        TestClass c = TestClass.createdAtMinute(TestPlans.evening(), 2, -1440);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WAITING);
        assertThat(c.stepOf(1)).isEqualTo("welcome");
        assertThat(c.sinceMinute(1)).isZero();
        assertThat(c.minutesIn(1)).isZero();
    }

    @Test void a_class_created_a_day_ahead_counts_from_the_opening() {
        TestClass c = TestClass.createdAtMinute(TestPlans.evening(), 2, -1440).minute(3).open("welcome");
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.LISTENING);

        c.minute(9).open("wicks").minute(11);
        assertThat(c.sinceMinute(1)).isEqualTo(9);
        assertThat(c.minutesIn(1)).isEqualTo(2);
    }

    @Test void during_a_talk_everybody_listens_until_the_next_led_step_opens() {
        TestClass c = TestClass.evening(2).minute(1).open("welcome").minute(30);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.LISTENING);
        assertThat(c.sinceMinute(1)).isEqualTo(1);
        assertThat(c.minutesIn(1)).isEqualTo(29);
    }

    @Test void a_seat_still_at_work_when_a_talk_opens_stays_at_its_step() {
        Plan plan = TestPlans.of(
                TestPlans.step("wicks", HANDS_ON, LED, 6),
                TestPlans.step("about-pouring", TALK, LED, 4),
                TestPlans.step("pour", POUR, LED, 10));
        TestClass c = TestClass.of(plan, 2).open("wicks").minute(6).finish(1, "wicks").minute(8).open("about-pouring");

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.LISTENING);
        assertThat(c.stepOf(2)).isEqualTo("wicks");
        assertThat(c.minute(9).finish(2, "wicks").standing(2).phase()).isEqualTo(Standing.Phase.LISTENING);
    }

    @Test void a_free_step_behind_a_talk_counts_from_the_end_of_the_time_box() {
        Plan plan = TestPlans.of(
                TestPlans.step("welcome", TALK, LED, 5),
                TestPlans.step("wicks", HANDS_ON, FREE, 6));
        TestClass c = TestClass.of(plan, 2).minute(2).open("welcome").minute(4);

        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.sinceMinute(1)).isEqualTo(7);
        assertThat(c.minutesIn(1)).isZero();
        assertThat(c.minute(10).minutesIn(1)).isEqualTo(3);
    }

    @Test void a_quick_seat_may_finish_a_free_step_before_the_talk_is_over() {
        Plan plan = TestPlans.of(
                TestPlans.step("welcome", TALK, LED, 5),
                TestPlans.step("wicks", HANDS_ON, FREE, 6),
                TestPlans.step("blend", HANDS_ON, FREE, 6));
        TestClass c = TestClass.of(plan, 2).minute(2).open("welcome").minute(4).finish(1, "wicks");

        assertThat(c.stepOf(1)).isEqualTo("blend");
        assertThat(c.sinceMinute(1)).isEqualTo(4);
    }

    @Test void a_plan_that_begins_with_a_free_step_begins_by_itself_with_the_class() {
        Plan plan = TestPlans.of(
                TestPlans.step("aprons", HANDS_ON, FREE, 5),
                TestPlans.step("wicks", HANDS_ON, LED, 6));
        TestClass c = TestClass.createdAtMinute(plan, 2, -600).minute(4);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.stepOf(1)).isEqualTo("aprons");
        assertThat(c.minutesIn(1)).isEqualTo(4);
    }

    @Test void a_plan_without_pour_or_cure_ends_with_its_last_step() {
        Plan plan = TestPlans.of(
                TestPlans.step("fold", HANDS_ON, FREE, 5),
                TestPlans.step("dip", HANDS_ON, LED, 6));
        TestClass c = TestClass.of(plan, 1).minute(5).finish(1, "fold").open("dip").minute(12).finish(1, "dip");

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.DONE);
        assertThat(c.sinceMinute(1)).isEqualTo(12);
        assertThat(c.pouredAtMinute(1)).isEmpty();
    }

    @Test void a_class_that_begins_early_with_the_talk_left_out_counts_from_the_opening() {
        TestClass c = TestClass.createdAtMinute(TestPlans.evening(), 2, -1440).minute(-5).open("wicks").minute(2);

        assertThat(c.sinceMinute(1)).isEqualTo(-5);
        assertThat(c.minutesIn(1)).isEqualTo(7);
    }

    @Test void who_comes_in_during_the_talk_listens_from_then_on() {
        TestClass c = TestClass.evening(2).expect(2).minute(1).open("welcome").minute(3).arrive(2);

        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.LISTENING);
        assertThat(c.sinceMinute(2)).isEqualTo(3);
    }

    @Test void a_talk_cut_short_by_the_next_led_step_ended_then() {
        Plan plan = TestPlans.of(
                TestPlans.step("welcome", TALK, LED, 20),
                TestPlans.step("wicks", HANDS_ON, FREE, 6),
                TestPlans.step("pour", POUR, LED, 10));
        TestClass c = TestClass.of(plan, 2).open("welcome").minute(9).open("pour").minute(12);

        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.minutesIn(1)).isEqualTo(3);
    }

    @Test void a_free_step_kept_closed_by_a_talk_that_was_left_out_opens_with_the_step_after() {
        Plan plan = TestPlans.of(
                TestPlans.step("wicks", HANDS_ON, LED, 6),
                TestPlans.step("about-blending", TALK, LED, 4),
                TestPlans.step("blend", HANDS_ON, FREE, 8),
                TestPlans.step("pour", POUR, LED, 10));
        TestClass c = TestClass.of(plan, 2).open("wicks").minute(5).finish(1, "wicks").minute(20);
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WAITING);

        c.open("pour").minute(22);
        assertThat(c.stepOf(1)).isEqualTo("blend");
        assertThat(c.minutesIn(1)).isEqualTo(2);
    }

    @Test void a_step_whose_opening_is_taken_back_under_a_later_one_locks_nobody_out() {
        Plan plan = TestPlans.of(
                TestPlans.step("wicks", HANDS_ON, LED, 6),
                TestPlans.step("pour", POUR, LED, 10));
        TestClass c = TestClass.of(plan, 2).open("wicks");
        long wicks = c.seq();
        c.minute(4).open("pour").undo(wicks);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.sinceMinute(1)).isEqualTo(4);
        assertThat(c.finish(1, "wicks").stepOf(1)).isEqualTo("pour");
    }

    @Test void the_class_does_not_go_back_to_a_talk_it_left_out() {
        TestClass c = TestClass.evening(2).open("wicks");

        assertThat(c.refusalOf(opened("welcome"))).isEqualTo(new Refusal.AlreadySo(State.PASSED));
    }
}
