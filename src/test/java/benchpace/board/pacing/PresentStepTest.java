package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.EarlierView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.Watched;
import benchpace.live.TestClass;
import benchpace.plan.Opening;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The heading is the step the class has open, whoever is slow or late. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PresentStepTest {

    private static NowView now(TestClass c, double minute) {
        return new Watched(c).view(minute).present();
    }

    private static String heading(TestClass c, double minute) {
        return now(c, minute).step().map(ClassView.StepView::id).orElse("none");
    }

    private static TestClass all(TestClass c, String step, int... seats) {
        for (int seat : seats) {
            c.finish(seat, step);
        }
        return c;
    }

    /** Six seats; five have set their wicks and blended, and the pour is open. */
    private static TestClass pouringWithoutSeatSix() {
        TestClass c = TestClass.evening(6).open("welcome").expect(6).minute(5).open("wicks").minute(9);
        all(c, "wicks", 1, 2, 3, 4, 5).minute(16);
        return all(c, "blend", 1, 2, 3, 4, 5).minute(20).open("pour");
    }

    @Test void a_seat_that_comes_late_starts_on_its_own_and_the_class_stays_at_its_step() {
        TestClass c = all(pouringWithoutSeatSix().minute(22), "pour", 1, 2).minute(23).arrive(6);

        NowView now = now(c, 24);

        assertThat(now.step().orElseThrow().name()).isEqualTo("Step pour");
        assertThat(now.done()).isEqualTo(2);
        assertThat(now.of()).isEqualTo(6);
        assertThat(now.notDone()).containsExactly(3, 4, 5);
        assertThat(now.earlier()).singleElement().isEqualTo(
                new EarlierView("wicks", "Step wicks", "", "", true, List.of(6)));
    }

    @Test void who_comes_late_is_no_longer_said_to_start_once_it_has_done_something() {
        TestClass c = pouringWithoutSeatSix().minute(23).arrive(6).minute(27).finish(6, "wicks");

        assertThat(now(c, 28).earlier()).singleElement().isEqualTo(
                new EarlierView("blend", "Step blend", "", "", false, List.of(6)));
    }

    @Test void the_slowest_seat_holds_back_no_heading() {
        TestClass c = TestClass.evening(6).open("welcome").minute(5).open("wicks").minute(9);
        all(c, "wicks", 1, 2, 3, 4, 5).minute(16);
        all(c, "blend", 1, 2, 3, 4, 5).minute(20).open("pour").minute(24);
        all(c, "pour", 1, 2, 3, 4, 5);

        assertThat(heading(c, 25)).isEqualTo("cure");
        assertThat(now(c, 25).earlier()).singleElement().isEqualTo(
                new EarlierView("wicks", "Step wicks", "", "", false, List.of(6)));
    }

    @Test void a_led_step_is_the_heading_as_soon_as_it_is_open_even_if_nobody_is_there_yet() {
        TestClass c = TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(8).open("pour");

        assertThat(heading(c, 9)).isEqualTo("pour");
        assertThat(now(c, 9).earlier()).extracting(EarlierView::seats).containsExactly(List.of(1, 2, 3, 4));
        assertThat(now(c, 9).since()).contains(TestClass.instant(8));
    }

    @Test void a_free_step_is_the_heading_once_more_than_half_have_reached_it() {
        TestClass c = all(TestClass.evening(6).open("welcome").minute(5).open("wicks").minute(9), "wicks", 1, 2, 3);
        assertThat(heading(c, 9.5)).as("three of six").isEqualTo("wicks");

        c.minute(10).finish(4, "wicks");

        assertThat(heading(c, 10.5)).isEqualTo("blend");
        assertThat(now(c, 10.5).since()).contains(TestClass.instant(10));
    }

    @Test void who_leaves_pairs_up_or_comes_late_moves_it_never_back() {
        TestClass c = all(TestClass.evening(5).expect(5).open("welcome").minute(5).open("wicks").minute(9), "wicks",
                1, 2, 3);
        assertThat(heading(c, 9.5)).isEqualTo("blend");

        c.minute(10).arrive(5).leave(1).minute(11).leave(2);

        assertThat(heading(c, 11.5)).as("one of three has come that far").isEqualTo("blend");
    }

    @Test void an_undo_takes_it_back() {
        TestClass c = all(TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(9), "wicks", 1, 2, 3);
        assertThat(heading(c, 9.5)).isEqualTo("blend");

        assertThat(heading(c.undoLast(), 9.5)).isEqualTo("wicks");
        assertThat(heading(c.minute(12).open("pour"), 12.5)).isEqualTo("pour");
        assertThat(heading(c.undoLast(), 12.5)).isEqualTo("wicks");
    }

    @Test void in_the_wait_the_cure_is_the_heading_although_the_finish_is_open_until_a_candle_may_be_firm() {
        TestClass c = TestClass.atThePour(4).minute(26);
        all(c, "pour", 1, 2, 3, 4).minute(40).open("trim");

        assertThat(heading(c, 45)).isEqualTo("cure");
        assertThat(heading(c, 87)).as("the plan's hour is over").isEqualTo("trim");
        assertThat(now(c, 87).since()).contains(TestClass.instant(40));
    }

    @Test void one_hand_test_begins_the_finish_that_is_open_and_the_others_are_told_apart_as_setting() {
        TestClass c = TestClass.atThePour(4).minute(26);
        all(c, "pour", 1, 2, 3, 4).minute(70).open("trim").minute(72).judgeSet(2);

        NowView now = now(c, 73);

        assertThat(now.step().orElseThrow().name()).isEqualTo("Step trim");
        assertThat(now.notDone()).containsExactly(2);
        assertThat(now.setting()).containsExactly(1, 3, 4);
        assertThat(now.earlier()).isEmpty();
    }

    @Test void the_last_step_stays_the_heading_when_everybody_is_done_with_it() {
        TestClass c = TestClass.atThePour(2).minute(26);
        all(c, "pour", 1, 2).minute(90).open("trim").minute(94);
        all(c, "trim", 1, 2).minute(98);
        all(c, "wrap", 1, 2);

        assertThat(heading(c, 99)).isEqualTo("wrap");
        assertThat(now(c, 99).done()).isEqualTo(2);
    }

    @Test void a_talk_at_the_end_stays_the_heading_after_its_time_box() {
        TestClass c = TestClass.of(TestPlans.of(
                TestPlans.step("glass", StepKind.HANDS_ON, Opening.LED, 4),
                TestPlans.step("farewell", StepKind.TALK, Opening.LED, 3)), 3).minute(1).open("glass").minute(4);
        all(c, "glass", 1, 2).minute(6).open("farewell");

        assertThat(heading(c, 8)).isEqualTo("farewell");
        assertThat(heading(c, 30)).isEqualTo("farewell");
        assertThat(now(c, 30).earlier()).extracting(EarlierView::seats).containsExactly(List.of(3));
    }

    @Test void after_the_time_box_of_a_talk_the_free_step_has_been_open_since_the_box_ended() {
        TestClass c = TestClass.of(TestPlans.of(
                TestPlans.step("hello", StepKind.TALK, Opening.LED, 5),
                TestPlans.step("glass", StepKind.HANDS_ON, Opening.FREE, 4),
                TestPlans.step("fill", StepKind.HANDS_ON, Opening.FREE, 4)), 3).minute(1).open("hello");

        assertThat(now(c, 7).since()).contains(TestClass.instant(6));
        assertThat(now(c.minute(9).finish(1, "glass"), 10).since()).contains(TestClass.instant(6));
        assertThat(heading(c.minute(11).finish(2, "glass"), 12)).isEqualTo("fill");
        assertThat(now(c, 12).since()).contains(TestClass.instant(11));
    }

    @Test void a_class_of_free_steps_alone_goes_with_most_of_its_seats() {
        TestClass c = TestClass.of(TestPlans.of(
                TestPlans.step("hello", StepKind.TALK, Opening.FREE, 5),
                TestPlans.step("glass", StepKind.HANDS_ON, Opening.FREE, 4),
                TestPlans.step("fill", StepKind.HANDS_ON, Opening.FREE, 4),
                TestPlans.step("tie", StepKind.HANDS_ON, Opening.FREE, 4)), 3);

        assertThat(heading(c, 1)).isEqualTo("glass");
        assertThat(now(c, 1).since()).contains(TestClass.instant(0));
        c.minute(3).finish(1, "glass").finish(1, "fill").finish(1, "tie");
        assertThat(heading(c, 4)).as("one hurries ahead").isEqualTo("glass");
        assertThat(heading(c.minute(5).finish(2, "glass"), 6)).isEqualTo("fill");
    }

    @Test void before_the_class_and_after_it_there_is_none() {
        assertThat(now(TestClass.evening(2), -5).step()).isEqualTo(Optional.empty());
        assertThat(now(TestClass.evening(2).open("welcome").minute(3).close(), 4).step()).isEmpty();
    }
}
