package benchpace.board.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** Passing time counted over the sleeps of a laptop. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AwakeAndAsleepTest {
    private long awakeMillis = 5_000;
    private Optional<Duration> sinceBoot = Optional.of(Duration.ofMillis(90_000));

    private final AwakeAndAsleep time = new AwakeAndAsleep(() -> awakeMillis * 1_000_000, () -> sinceBoot);

    private void pass(long millis, long asleep) {
        awakeMillis += millis;
        sinceBoot = sinceBoot.map(t -> t.plusMillis(millis + asleep));
    }

    @Test void awake_it_counts_evenly_however_coarse_the_other_count_is() {
        for (int i = 1; i <= 100; i++) {
            pass(100, i % 2 == 0 ? 9 : -9);
            assertThat(time.now()).isEqualTo(Duration.ofMillis(100L * i));
        }
    }

    @Test void a_sleep_counts_as_soon_as_it_is_over() {
        pass(2_000, 0);
        time.now();
        pass(1_000, 2_400_000);

        assertThat(time.now()).isEqualTo(Duration.ofMillis(2_403_000));
        assertThat(time.countsSleep()).isTrue();
    }

    @Test void several_sleeps_add_up() {
        pass(1_000, 60_000);
        time.now();
        pass(1_000, 30_000);

        assertThat(time.now()).isEqualTo(Duration.ofMillis(92_000));
    }

    @Test void a_count_that_fails_later_takes_nothing_back() {
        pass(1_000, 60_000);
        Duration before = time.now();
        sinceBoot = Optional.empty();
        awakeMillis += 5_000;

        assertThat(time.now()).isEqualTo(before.plusSeconds(5));
    }

    @Test void without_such_a_count_it_says_that_sleeps_are_missing() {
        AwakeAndAsleep blind = new AwakeAndAsleep(() -> awakeMillis * 1_000_000, Optional::empty);
        awakeMillis += 4_000;

        assertThat(blind.countsSleep()).isFalse();
        assertThat(blind.now()).isEqualTo(Duration.ofSeconds(4));
    }

    @EnabledOnOs(OS.LINUX)
    @Test void linux_tells_of_sleeps() {
        LivedTime here = AwakeAndAsleep.ofThisComputer();

        assertThat(here.countsSleep()).isTrue();
        assertThat(here.now()).isLessThan(Duration.ofSeconds(1));
    }
}
