package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The board's time when the computer's clock is set forwards, backwards, or the laptop sleeps. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SteadyClockTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");

    private Instant wall = EVENING;
    private long nanos = 7_000;

    private SteadyClock clock(Instant notBefore) {
        return new SteadyClock(() -> wall, () -> nanos, notBefore);
    }

    /** Time passes, by the wall clock and by the steady counter alike. */
    private void pass(Duration time) {
        wall = wall.plus(time);
        nanos += time.toNanos();
    }

    @Test void it_tells_the_computers_time() {
        SteadyClock clock = clock(Instant.EPOCH);

        assertThat(clock.instant()).isEqualTo(EVENING);
        pass(Duration.ofMinutes(5));
        assertThat(clock.instant()).isEqualTo(EVENING.plusSeconds(300));
    }

    @Test void set_back_an_hour_it_goes_on_evenly() {
        SteadyClock clock = clock(Instant.EPOCH);
        clock.instant();
        wall = wall.minus(Duration.ofHours(1));

        assertThat(clock.instant()).isEqualTo(EVENING);
        pass(Duration.ofMinutes(10));
        assertThat(clock.instant()).isEqualTo(EVENING.plusSeconds(600));
    }

    @Test void set_forwards_it_follows() {
        SteadyClock clock = clock(Instant.EPOCH);
        wall = wall.plus(Duration.ofHours(1));

        assertThat(clock.instant()).isEqualTo(EVENING.plusSeconds(3600));
    }

    @Test void a_laptop_that_slept_catches_up() {
        SteadyClock clock = clock(Instant.EPOCH);
        wall = wall.plus(Duration.ofMinutes(40));  // the steady counter stood still meanwhile

        assertThat(clock.instant()).isEqualTo(EVENING.plusSeconds(2400));
    }

    @Test void it_starts_no_earlier_than_what_is_written_already() {
        SteadyClock clock = clock(EVENING.plusSeconds(120));

        assertThat(clock.instant()).isEqualTo(EVENING.plusSeconds(120));
        pass(Duration.ofMinutes(1));
        assertThat(clock.instant()).isEqualTo(EVENING.plusSeconds(180));
        pass(Duration.ofMinutes(10));
        assertThat(clock.instant()).as("goes evenly until the computer's clock has caught up")
                .isEqualTo(EVENING.plusSeconds(780));
    }

    @Test void whatever_the_computers_clock_does_it_never_goes_back() {
        SteadyClock clock = clock(Instant.EPOCH);
        List<Instant> told = new ArrayList<>();
        long[] jumps = {30, -30, 3600, -7200, 1, 0, -1, 86_400, -86_400};
        for (long jump : jumps) {
            wall = wall.plusSeconds(jump);
            pass(Duration.ofMillis(250));
            told.add(clock.instant());
        }

        assertThat(told).isSorted().doesNotHaveDuplicates();
    }
}
