package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.ClassView.NowView;
import benchpace.board.ClassView.Stage;
import benchpace.board.SeatView.Mark;
import benchpace.live.TestClass;
import benchpace.plan.Opening;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;
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
        assertThat(view.cure().stillSetting()).startsWith("Seats 1 and 2 are still setting, until about ");
    }

    @Test void opened_all_the_same_the_finish_leaves_the_tile_its_countdown_and_takes_no_tap() {
        SeatView seat = new Watched(poured().minute(40).open("trim")).view(45).seat(1);

        assertThat(seat.mark()).isEqualTo(Mark.SETTING);
        assertThat(seat.canFinish()).isFalse();
    }

    @Test void once_it_may_be_firm_one_tap_finishes_it() {
        ClassView view = new Watched(poured().minute(40).open("trim")).view(87);

        assertThat(view.seat(1).mark()).isEqualTo(Mark.TRY_IT);
        assertThat(view.seat(1).canFinish()).isTrue();
        assertThat(view.seat(1).stepId()).isEqualTo("trim");
        assertThat(view.cure().stillSetting()).isEmpty();
    }
}
