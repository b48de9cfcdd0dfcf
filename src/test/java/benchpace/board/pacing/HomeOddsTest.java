package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.board.Stories;
import benchpace.board.view.Watched;
import benchpace.live.TestClass;
import benchpace.pace.forecast.FinishTimes;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** How likely the promised end is. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HomeOddsTest {
    private static final FinishTimes TIMES = new FinishTimes(List.of(70.0, 80.0, 84.0, 92.0, 100.0));

    private static HomeOdds odds(double rest, double promised, double now) {
        return HomeOdds.of(TIMES, at -> ClassTracks.minutes(TestClass.instant(0), at), Duration.ofMinutes((long) rest),
                TestClass.instant(promised), TestClass.instant(now));
    }

    @Test void the_promise_is_kept_if_the_last_candle_and_the_rest_fit_before_it() {
        assertThat(odds(10, 94, 0).kept()).as("70, 80 and 84 and ten minutes").isEqualTo(0.6);
        assertThat(odds(10, 94, 0).late()).as("92 and 100: later than five minutes after it").isEqualTo(0.4);
        assertThat(odds(10, 94, 0).early()).as("only 70 lies more than five minutes before")
                .isCloseTo(0.2, within(1e-9));
    }

    @Test void a_few_minutes_make_nobody_late() {
        assertThat(odds(0, 88, 0).late()).as("92 is four minutes after it").isEqualTo(0.2);
    }

    @Test void nobody_goes_before_the_rest_is_done_from_now_on() {
        assertThat(odds(15, 100, 86).kept()).isZero();
        assertThat(odds(15, 100, 86).late()).as("of a candle ready by now only the rest counts").isEqualTo(0.4);
        assertThat(odds(15, 90, 86).late()).isEqualTo(1);
    }

    @Test void most_of_the_table_has_to_tap_before_the_evening_foretells_anything() {
        TestClass c = TestClass.of(Stories.plan(), 4).minute(1).finish(1, "vessel").finish(2, "vessel");
        assertThat(new Watched(c).view(2).home().promise()).isEqualTo(HomeTime.Promise.PLANNED);
        c.minute(2.5).finish(3, "vessel");
        assertThat(new Watched(c).view(3).home().told()).isTrue();
    }
}
