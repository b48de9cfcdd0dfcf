package benchpace.board.playback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlaybackTimeTest {
    private static final Instant FROM = Instant.parse("2027-03-04T18:00:00Z");
    private static final Instant UNTIL = FROM.plus(Duration.ofHours(2));

    private final AtomicReference<Duration> passing = new AtomicReference<>(Duration.ofDays(3));
    private final PlaybackTime time = new PlaybackTime(FROM, UNTIL, passing::get);

    private void pass(long millis) {
        passing.updateAndGet(t -> t.plusMillis(millis));
    }

    private void assertAt(long seconds) {
        assertThat(Duration.between(FROM, time.instant())).isEqualTo(Duration.ofSeconds(seconds));
    }

    @Test void it_begins_at_once_and_as_fast_as_it_was() {
        assertAt(0);
        pass(90_000);
        assertAt(90);
    }

    @Test void at_60_times_a_minute_takes_a_second() {
        time.speed(60);
        pass(1_000);
        assertAt(60);
        pass(59_000);
        assertAt(3_600);
    }

    @Test void another_speed_holds_from_where_it_is_on() {
        time.speed(60);
        pass(10_000);
        time.speed(2);
        assertAt(600);
        pass(30_000);
        assertAt(660);
    }

    @Test void paused_it_stands_still_and_goes_on_from_there() {
        pass(5_000);
        time.pause(true);
        pass(3_600_000);
        assertAt(5);
        time.pause(false);
        pass(1_000);
        assertAt(6);
    }

    @Test void it_is_moved_back_and_forth_and_plays_on_from_there() {
        time.moveTo(FROM.plusSeconds(3_000));
        assertAt(3_000);
        pass(1_000);
        time.moveTo(FROM.plusSeconds(60));
        pass(2_000);
        assertAt(62);
    }

    @Test void moved_while_it_stands_it_stands_there() {
        time.pause(true);
        time.moveTo(FROM.plusSeconds(600));
        pass(10_000);
        assertAt(600);
    }

    @Test void it_never_leaves_the_evening() {
        time.speed(60);
        pass(10_000_000);
        assertThat(time.instant()).isEqualTo(UNTIL);
        assertThatThrownBy(() -> time.moveTo(UNTIL.plusMillis(1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> time.moveTo(FROM.minusMillis(1))).isInstanceOf(IllegalArgumentException.class);
        assertThat(time.instant()).isEqualTo(UNTIL);
    }

    @Test void its_speed_is_from_1_to_60() {
        for (int wrong : new int[] {0, -1, 61}) {
            assertThatThrownBy(() -> time.speed(wrong)).isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("1 to 60");
        }
    }

    @Test void each_change_of_its_course_is_a_turn_and_time_alone_is_none() {
        long before = time.state().turn();
        pass(10_000);
        assertThat(time.state().turn()).isEqualTo(before);
        time.speed(2);
        time.pause(true);
        time.moveTo(FROM);
        assertThat(time.state().turn()).isEqualTo(before + 3);
    }
}
