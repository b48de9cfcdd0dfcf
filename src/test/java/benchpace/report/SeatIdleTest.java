package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.Assignment;
import benchpace.plan.ActivityId;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SeatIdleTest {
    private static final Instant POURED = Instant.parse("2027-03-04T19:40:00Z");

    private static Instant minute(double minutes) {
        return POURED.plusSeconds(Math.round(60 * minutes));
    }

    private static Assignment part(double from, double until) {
        return new Assignment(new ActivityId("tea"), minute(from), minute(until), Assignment.Status.DONE);
    }

    @Test
    void the_rest_of_the_wait_is_idle() {
        SeatIdle idle = SeatIdle.of(4, minute(0), minute(60), List.of(part(5, 20)), List.of(part(30, 42.5)));
        assertThat(idle).isEqualTo(new SeatIdle(4, 60, 15, 12.5, 32));
    }

    @Test
    void what_lies_outside_the_wait_fills_none_of_it() {
        SeatIdle idle = SeatIdle.of(4, minute(0), minute(30), List.of(part(-10, 4)),
                List.of(part(25, 50), part(60, 70)));
        assertThat(idle).isEqualTo(new SeatIdle(4, 30, 4, 5, 21));
    }

    @Test
    void a_wait_that_ended_before_the_hands_were_free_was_none() {
        assertThat(SeatIdle.of(4, minute(5), minute(0), List.of(), List.of(part(0, 5))))
                .isEqualTo(new SeatIdle(4, 0, 0, 0, 0));
    }
}
