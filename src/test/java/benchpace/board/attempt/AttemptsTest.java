package benchpace.board.attempt;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.WatchedLog;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A model that fails gives way, is noted once, and is tried again when there is reason to. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AttemptsTest {
    private static final Instant NOON = Instant.parse("2027-03-04T12:00:10Z");

    private final WatchedLog log = new WatchedLog(Attempts.class.getName());
    private final Attempts attempts = new Attempts("thursday");
    private final AtomicInteger tried = new AtomicInteger();

    @AfterEach void stopWatching() {
        log.close();
    }

    private String of(long seq, Instant now, Supplier<String> work) {
        return attempts.of(Model.WAIT, seq, now, () -> {
            tried.incrementAndGet();
            return work.get();
        }, () -> "by the plan");
    }

    private static String fail() {
        throw new ArrayIndexOutOfBoundsException(61);
    }

    private static String tooDeep() {
        return tooDeep() + "!";
    }

    @Test void what_fails_gives_way_to_what_stands_in_for_it_even_where_the_stack_is_too_deep() {
        assertThat(of(4, NOON, AttemptsTest::fail)).isEqualTo("by the plan");
        assertThat(of(5, NOON, AttemptsTest::tooDeep)).isEqualTo("by the plan");
        assertThat(attempts.ofEveryView().models()).containsExactly(Model.WAIT);
    }

    @Test void it_is_tried_again_with_the_next_event_and_the_next_minute_and_not_with_every_look() {
        of(4, NOON, AttemptsTest::fail);
        of(4, NOON.plusSeconds(49), AttemptsTest::fail);
        assertThat(tried).hasValue(1);

        of(4, NOON.plusSeconds(50), AttemptsTest::fail);
        assertThat(tried).as("the next minute").hasValue(2);
        of(5, NOON.plusSeconds(50), AttemptsTest::fail);
        assertThat(tried).as("the next event").hasValue(3);
    }

    @Test void once_it_can_be_computed_again_nothing_is_missing() {
        of(4, NOON, AttemptsTest::fail);
        assertThat(attempts.now(4).models()).containsExactly(Model.WAIT);

        assertThat(of(5, NOON, () -> "planned")).isEqualTo("planned");
        assertThat(attempts.now(5)).isEqualTo(Missing.NOTHING);
        assertThat(attempts.ofEveryView()).isEqualTo(Missing.NOTHING);
    }

    @Test void what_somebody_asked_for_by_hand_is_not_called_failing_once_something_has_happened_since() {
        attempts.of(Model.FLAGS, 4, NOON, AttemptsTest::fail, () -> "");

        assertThat(attempts.now(4).models()).containsExactly(Model.FLAGS);
        assertThat(attempts.now(5).models()).isEmpty();
    }

    @Test void the_log_has_one_trace_for_each_fault_naming_class_and_model() {
        for (int minute = 0; minute < 30; minute++) {
            of(4, NOON.plusSeconds(60 * minute), AttemptsTest::fail);
            of(4, NOON.plusSeconds(60 * minute + 1), AttemptsTest::fail);
        }
        assertThat(log.records()).singleElement().satisfies(record -> {
            assertThat(record.getMessage()).contains("thursday", "WAIT");
            assertThat(record.getThrown()).isInstanceOf(ArrayIndexOutOfBoundsException.class);
        });

        of(5, NOON, () -> {
            throw new IllegalStateException("another");
        });
        attempts.of(Model.PACE, 5, NOON, AttemptsTest::fail, () -> "");
        assertThat(log.records()).hasSize(3);
    }

    @Test void several_things_are_missing_in_their_own_order() {
        attempts.of(Model.PACE, 4, NOON, AttemptsTest::fail, () -> "");
        attempts.of(Model.WAIT, 4, NOON, AttemptsTest::fail, () -> "");
        attempts.of(Model.CURE, 4, NOON, AttemptsTest::fail, () -> "");

        assertThat(attempts.ofEveryView().models()).containsExactly(Model.WAIT, Model.CURE, Model.PACE);
    }
}
