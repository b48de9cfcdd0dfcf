package benchpace.board.view;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.pacing.HomeTime;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.SeatView.Mark;
import benchpace.live.TestClass;
import benchpace.plan.Opening;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What screens show at a moment. Minutes count from the class's beginning; the cure is the plan's hour. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ViewMakerTest {

    private static Optional<String> present(TestClass c, double minute) {
        NowView now = new Watched(c).view(minute).present();
        return now.step().map(ClassView.StepView::id);
    }

    private static TestClass talkThenFree() {
        return TestClass.of(TestPlans.of(
                TestPlans.step("hello", StepKind.TALK, Opening.LED, 5),
                TestPlans.step("glass", StepKind.HANDS_ON, Opening.FREE, 4),
                TestPlans.step("pour", StepKind.POUR, Opening.LED, 5)), 3);
    }

    @Test void a_talk_is_shown_until_its_time_box_ends() {
        TestClass c = talkThenFree().minute(1).open("hello");

        assertThat(present(c, 3)).contains("hello");
        assertThat(present(c, 6.5)).contains("glass");
    }

    @Test void a_talk_is_over_when_the_first_seat_has_gone_on() {
        TestClass c = talkThenFree().minute(1).open("hello").minute(3).finish(2, "glass");

        assertThat(present(c, 3.5)).contains("glass");
    }

    /** Everybody has poured at minute 26; the plan's cure is an hour. */
    private static TestClass poured() {
        TestClass c = TestClass.evening(2).open("welcome").minute(5).open("wicks").minute(10);
        for (int seat = 1; seat <= 2; seat++) {
            c.finish(seat, "wicks").finish(seat, "blend");
        }
        return c.minute(20).open("pour").minute(26).finish(1, "pour").finish(2, "pour");
    }

    @Test void whoever_opens_the_finish_is_told_which_candles_still_set() {
        ClassView view = new Watched(poured()).view(40);

        assertThat(view.stage()).isEqualTo(Stage.SETTING);
        assertThat(view.cure().setting()).map(ClassView.SettingView::seats).contains(List.of(1, 2));
    }

    @Test void opened_all_the_same_the_finish_leaves_the_tile_its_countdown_and_takes_no_tap() {
        SeatView seat = new Watched(poured().minute(40).open("trim")).view(45).seat(1);

        assertThat(seat.mark()).isEqualTo(Mark.SETTING);
        assertThat(seat.canFinish()).isFalse();
        assertThat(seat.afterTest()).as("what a tap means once somebody says that it was tried").isEqualTo("trim");
    }

    @Test void once_it_may_be_firm_one_tap_finishes_it() {
        ClassView view = new Watched(poured().minute(40).open("trim")).view(87);

        assertThat(view.seat(1).mark()).isEqualTo(Mark.SETTING);
        assertThat(new Watched(poured()).view(96).seat(1).mark()).isEqualTo(Mark.TRY_IT);
        assertThat(view.seat(1).canFinish()).isTrue();
        assertThat(view.seat(1).stepId()).isEqualTo("trim");
        assertThat(view.seat(1).afterTest()).isEmpty();
        assertThat(view.cure().setting()).isEmpty();
    }

    @Test void the_class_is_at_the_finish_once_it_is_open_and_a_candle_may_be_firm() {
        TestClass opened = poured().minute(40).open("trim");

        assertThat(present(opened, 45)).as("all still set").isNotEqualTo(Optional.of("trim"));
        assertThat(present(opened, 87)).contains("trim");
    }

    @Test void whoever_opens_the_finish_is_told_which_candles_nobody_has_tried() {
        assertThat(new Watched(poured()).view(87).cure().untried()).containsExactly(1, 2);
        assertThat(new Watched(poured().minute(86.5).judgeSet(1)).view(87).cure().untried())
                .containsExactly(2);
        assertThat(new Watched(poured()).view(40).cure().untried()).as("too early to try").isEmpty();
    }

    // ---- when it changes by itself

    @Test void a_view_changes_when_a_claim_lapses() {
        TestClass c = talkThenFree().minute(8.1).claim(2, "AB");

        assertThat(new Watched(c).view(13.05).nextChange()).contains(TestClass.instant(13.1));
    }

    @Test void a_view_changes_when_a_talk_has_had_its_time() {
        TestClass c = talkThenFree().minute(1.2).open("hello");

        assertThat(new Watched(c).view(6.1).nextChange()).contains(TestClass.instant(6.2));
    }

    // ---- home

    @Test void home_is_the_last_candle_and_what_comes_after_it_and_never_in_the_past() {
        HomeTime home = new Watched(poured()).view(40).home();

        Duration finish = new Watched(poured()).view(40).steps().stream()
                .filter(s -> s.kind() == StepKind.FINISH).map(ClassView.StepView::planned)
                .reduce(Duration.ZERO, Duration::plus);
        assertThat(home.rest()).isEqualTo(finish).isPositive();
        assertThat(home.home(home.p50(), TestClass.instant(40))).isEqualTo(home.p50().plus(finish));
        assertThat(home.home(home.p50(), TestClass.instant(200))).isEqualTo(TestClass.instant(200).plus(finish));
    }

    @Test void a_class_that_has_ended_says_when() {
        TestClass ended = poured().minute(95).close();

        HomeTime home = new Watched(ended).view(300).home();

        assertThat(home.home(home.p90(), TestClass.instant(300))).isEqualTo(TestClass.instant(95));
    }

    @Test void home_does_not_hang_on_a_seat_that_is_done() {
        TestClass c = poured().minute(87).open("trim").minute(88).finish(1, "trim");

        assertThat(new Watched(c).view(89).home().driver()).map(HomeTime.Driver::seat).contains(2);
    }
}
