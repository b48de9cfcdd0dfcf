package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.screen.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Guesses and waits; the figures are those of NIST SP 800-63B, 5.2.2, the fading of the common count is our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ThrottleTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");

    private final Throttle throttle = new Throttle();

    private Throttle.Try miss(String address, Instant now) {
        return throttle.attempt(address, now, Optional::empty);
    }

    private Throttle.Try hit(String address, Role role, Instant now) {
        return throttle.attempt(address, now, () -> Optional.of(role));
    }

    @Test void a_helpers_pin_neither_clears_nor_counts_and_the_instructors_clears() {
        for (int i = 0; i < Throttle.FREE - 1; i++) {
            miss("a", EVENING);
            assertThat(hit("a", Role.HELPER, EVENING).role()).contains(Role.HELPER);
        }
        assertThat(hit("a", Role.INSTRUCTOR, EVENING).role()).contains(Role.INSTRUCTOR);
        for (int i = 0; i < Throttle.FREE; i++) {
            assertThat(miss("a", EVENING).pause()).isEmpty();
        }
        assertThat(miss("a", EVENING).pause()).contains(Duration.ofSeconds(30));
    }

    @Test void guesses_side_by_side_are_compared_no_more_often_than_one_after_the_other() throws Exception {
        AtomicInteger compared = new AtomicInteger();
        ExecutorService devices = Executors.newFixedThreadPool(16);
        try {
            List<Callable<Throttle.Try>> guesses = Collections.nCopies(200, () -> throttle.attempt("a", EVENING, () -> {
                compared.incrementAndGet();
                return Optional.empty();
            }));
            for (Future<Throttle.Try> guess : devices.invokeAll(guesses)) {
                guess.get();
            }
        } finally {
            devices.shutdownNow();
        }
        assertThat(compared).hasValue(Throttle.FREE);
    }

    @Test void after_a_hundred_wrong_ones_from_everywhere_all_wait_until_the_count_was_halved() {
        for (int i = 0; i < Throttle.MOST; i++) {
            assertThat(miss("from-" + i, EVENING.plusSeconds(60)).pause()).isEmpty();
        }

        assertThat(hit("new", Role.INSTRUCTOR, EVENING.plusSeconds(660)).pause())
                .as("the rest of the hour").contains(Duration.ofMinutes(50));
        assertThat(hit("new", Role.INSTRUCTOR, EVENING.plusSeconds(3_659)).pause()).contains(Duration.ofSeconds(1));

        Instant later = EVENING.plusSeconds(3_660);
        for (int i = 0; i < Throttle.MOST / 2; i++) {
            assertThat(miss("again-" + i, later).pause()).isEmpty();
        }
        assertThat(miss("one-more", later).pause()).contains(Duration.ofHours(1));
        assertThat(miss("tomorrow", later.plus(Duration.ofDays(2))).pause()).isEmpty();
    }
}
