package benchpace.board.waiting;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.CandleClock;
import benchpace.board.view.BareClass;
import benchpace.breaks.SetJudgement;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A candle that was trimmed and then had to be poured again is liquid wax once more. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PouredAgainTest {
    private static final SeatNumber SEAT = new SeatNumber(1);

    /** Trimmed, without a hand test, at minute 90. */
    private static TestClass trimmed() {
        return TestClass.atThePour(2).minute(25).finish(1, "pour").finish(2, "pour").minute(88).open("trim").minute(90)
                .finish(1, "trim");
    }

    private static CandleClock clock(LiveClass live, double minute) {
        return BareClass.of(live, TestClass.instant(minute)).clocks().get(SEAT);
    }

    @Test void a_trim_before_the_second_pour_says_nothing_of_the_wax_that_was_poured_since() {
        TestClass c = trimmed();
        assertThat(clock(c.live(), 91).settled()).isTrue();

        c.minute(92).pourAgain(1);

        CandleClock again = clock(c.live(), 93);
        assertThat(again.settled()).isFalse();
        assertThat(again.said().from()).isAfter(TestClass.instant(92));
        assertThat(again.stillSets(TestClass.instant(93))).isTrue();
    }

    @Test void it_is_called_to_no_wrapping_before_another_hand_test() {
        LiveClass live = trimmed().minute(92).pourAgain(1).live();

        SetJudgement test = new WaitFinish(live).handTest(live.seat(SEAT).orElseThrow());

        assertThat(test).isInstanceOf(SetJudgement.Awaited.class);
    }

    @Test void the_hand_test_of_the_new_wax_counts() {
        LiveClass live = trimmed().minute(92).pourAgain(1).minute(150).judgeSet(1).live();

        assertThat(clock(live, 151).settled()).isTrue();
        assertThat(new WaitFinish(live).handTest(live.seat(SEAT).orElseThrow()).passedBy(TestClass.instant(150)))
                .isTrue();
    }
}
