package benchpace.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.pairing.Caller.Circle;
import benchpace.web.screen.shell.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
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

    private static Caller stranger(String address) {
        return new Caller(Circle.STRANGERS, address, address);
    }

    private static Caller once(Circle circle) {
        return new Caller(circle, "device of " + circle, "d");
    }

    private Throttle.Try miss(String address, Instant now) {
        return throttle.attempt(stranger(address), now, Optional::empty);
    }

    private Throttle.Try hit(String address, Role role, Instant now) {
        return throttle.attempt(stranger(address), now, () -> Optional.of(role));
    }

    private void shutStrangersOut(Instant now) {
        for (int i = 0; i < Throttle.MOST; i++) {
            assertThat(miss("from-" + i, now).pause()).isEmpty();
        }
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
            List<Callable<Throttle.Try>> guesses = Collections.nCopies(200, () ->
                    throttle.attempt(stranger("a"), EVENING, () -> {
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

    @Test void strangers_who_guess_shut_out_strangers_and_nobody_else() {
        shutStrangersOut(EVENING);

        assertThat(hit("new", Role.INSTRUCTOR, EVENING).pause()).isPresent();
        for (Circle circle : EnumSet.complementOf(EnumSet.of(Circle.STRANGERS))) {
            assertThat(throttle.attempt(once(circle), EVENING, () -> Optional.of(Role.INSTRUCTOR)).role())
                    .as("%s", circle).contains(Role.INSTRUCTOR);
        }
    }

    /** Whoever has the helpers' link can pair as many devices as they like. */
    @Test void many_paired_devices_guess_no_faster_than_many_strangers() {
        for (int i = 0; i < Throttle.MOST; i++) {
            throttle.attempt(new Caller(Circle.STAFF, "phone " + i, "d"), EVENING, Optional::empty);
        }

        assertThat(throttle.attempt(new Caller(Circle.STAFF, "one more", "d"), EVENING, Optional::empty).pause())
                .contains(Duration.ofHours(1));
        assertThat(throttle.attempt(once(Circle.INSTRUCTORS), EVENING, Optional::empty).pause()).isEmpty();
    }

    @Test void what_was_tried_in_the_last_hour_is_told_with_where_it_came_from() {
        for (int i = 0; i < 34; i++) {
            miss("from-" + i % 12, EVENING.plusSeconds(i));
        }
        assertThat(throttle.guesses(EVENING.plusSeconds(60)))
                .isEqualTo(new Throttle.Guesses(34, 12, Optional.empty()));

        assertThat(throttle.guesses(EVENING.plusSeconds(3_610)).wrong()).isEqualTo(23);
        assertThat(throttle.guesses(EVENING.plusSeconds(4_000)).wrong()).isZero();
    }

    @Test void how_long_strangers_are_shut_out_is_told() {
        shutStrangersOut(EVENING);

        assertThat(throttle.guesses(EVENING.plusSeconds(60)).shutUntil()).contains(EVENING.plusSeconds(3_600));
        assertThat(throttle.guesses(EVENING.plusSeconds(3_600)).shutUntil()).isEmpty();
    }

    @Test void what_the_instructor_mistyped_themselves_is_nobodys_guess() {
        miss("tablet", EVENING);
        miss("other", EVENING);

        hit("tablet", Role.INSTRUCTOR, EVENING);

        assertThat(throttle.guesses(EVENING)).isEqualTo(new Throttle.Guesses(1, 1, Optional.empty()));
    }

    @Test void addresses_that_one_device_has_for_the_asking_are_one() {
        assertThat(Caller.network("2001:db8:1:2::1")).isEqualTo(Caller.network("2001:db8:1:2:ffff:abcd:0:7%eth0"))
                .isNotEqualTo(Caller.network("2001:db8:1:3::1"));
        assertThat(Caller.network("[fe80::1%eth0]")).isEqualTo(Caller.network("fe80::2")).isEqualTo(
                Caller.network("[fe80::3]"));
        assertThat(Caller.network("::ffff:192.168.1.7")).isEqualTo(Caller.network("192.168.1.7"))
                .isNotEqualTo(Caller.network("192.168.1.8"));
    }

    @Test void after_a_hundred_wrong_ones_from_everywhere_all_wait_until_the_count_was_halved() {
        shutStrangersOut(EVENING.plusSeconds(60));

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
