package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.pacing.HomeTime;
import benchpace.board.pacing.HomeTime.Basis;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the way home hangs on and rests on, in the middle of a sentence. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HomeWordsTest {
    private static final Instant AT = Instant.parse("2026-03-02T19:41:00Z");

    private static HomeTime home(Optional<HomeTime.Driver> driver, Basis basis) {
        return new HomeTime(AT, AT, AT, Duration.ZERO, Optional.empty(), AT, Optional.empty(), true, driver, basis);
    }

    private static String driver(int seat, boolean poured) {
        return HomeWords.driver(home(Optional.of(new HomeTime.Driver(seat, poured)), Basis.PLAN));
    }

    @Test void it_hangs_on_a_seat_and_the_cure_or_on_the_cure_alone_or_on_none() {
        assertThat(driver(4, false)).isEqualTo("seat 4, then the cure");
        assertThat(driver(4, true)).isEqualTo("the cure of seat 4");
        assertThat(HomeWords.driver(home(Optional.empty(), Basis.PLAN))).isEmpty();
    }

    @Test void it_rests_on_the_plan_the_pace_the_cure_or_the_hand() {
        assertThat(Arrays.stream(Basis.values()).map(basis -> HomeWords.basis(home(Optional.empty(), basis))))
                .containsExactly("", "by the plan's figures", "by tonight's pace and the plan's cure",
                        "by tonight's pace and the cure in this room", "by the plan's cure",
                        "by the cure in this room", "by hand", "by hand test");
    }
}
