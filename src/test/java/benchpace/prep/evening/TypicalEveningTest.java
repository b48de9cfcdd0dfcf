package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.TestPlans;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TypicalEveningTest {
    private static final Setting SETTING = Setting.of(TestPlans.evening(), 6);
    private static final TrajectoryCache CANDLES = new TrajectoryCache();
    private static final Evenings EVENINGS = Evenings.of(SETTING, 5, 200, CANDLES, Evenings.Progress.UNTOLD);

    private final TypicalEvening typical = EVENINGS.typical(CANDLES);

    @Test void it_ends_when_half_of_the_evenings_do() {
        long earlier = IntStream.range(0, EVENINGS.count()).filter(b -> EVENINGS.done(b) < typical.minutes()).count();

        assertThat(earlier).isBetween(98L, 100L);
        assertThat(typical.minutes()).isCloseTo(EVENINGS.timetable().done().p50(), within(1.0));
    }

    @Test void each_seat_goes_through_the_steps_one_after_the_other() {
        assertThat(typical.seats()).isEqualTo(6);
        for (int seat = 1; seat <= typical.seats(); seat++) {
            assertThat(typical.ends().get(seat - 1)).hasSize(7).isSorted();
            assertThat(typical.end(seat, 0)).isPositive();
        }
    }

    @Test void seats_differ_where_each_works_by_itself() {
        assertThat(typical.ends().stream().map(seat -> seat.get(1)).distinct().count()).isEqualTo(6);
    }
}
