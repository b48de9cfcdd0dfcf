package benchpace.board.playback;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlayedClassTest {

    private static LiveClass evening() {
        return TestClass.evening(4).minute(10).open("welcome").minute(15).open("wicks").minute(21).finish(1, "wicks")
                .minute(24).madeAt(22).finish(2, "wicks").minute(26).finish(3, "wicks").minute(27).undoLast().live();
    }

    private static int done(LiveClass live) {
        return (int) live.seats().stream().filter(s -> !s.finishes().isEmpty()).count();
    }

    @Test void it_is_at_each_instant_what_was_written_down_until_then() {
        PlayedClass played = new PlayedClass(evening().log());

        assertThat(done(played.at(TestClass.instant(20)))).isZero();
        assertThat(done(played.at(TestClass.instant(21)))).isEqualTo(1);
        assertThat(done(played.at(TestClass.instant(23)))).as("told late").isEqualTo(1);
        assertThat(done(played.at(TestClass.instant(24)))).isEqualTo(2);
        assertThat(done(played.at(TestClass.instant(26)))).isEqualTo(3);
        assertThat(done(played.at(TestClass.instant(27)))).as("taken back").isEqualTo(2);
    }

    @Test void whichever_way_it_is_moved_the_same_instant_is_the_same_class() {
        List<Recorded> log = evening().log();
        PlayedClass played = new PlayedClass(log);
        Random random = new Random(7);

        for (int i = 0; i < 200; i++) {
            double minute = 8 + 22 * random.nextDouble();
            int until = (int) log.stream().filter(r -> !r.recordedAt().isAfter(TestClass.instant(minute))).count();
            assertThat(played.at(TestClass.instant(minute)).log()).isEqualTo(log.subList(0, until));
        }
    }

    @Test void it_begins_two_minutes_before_the_class_did_and_ends_a_minute_after_the_last_word() {
        PlayedClass played = new PlayedClass(evening().log());

        assertThat(played.from()).isEqualTo(TestClass.instant(8));
        assertThat(played.until()).isEqualTo(TestClass.instant(28));
        assertThat(new PlayedClass(TestClass.evening(2).open("welcome").live().log()).from())
                .as("not before it was set up").isEqualTo(TestClass.START);
    }

    @Test void an_evening_whose_clock_was_set_right_passes_by_the_clock_that_was_right() {
        List<Recorded> log = new ArrayList<>(evening().log());
        Duration by = Duration.ofHours(9);
        log.add(new Recorded(log.size() + 1, "board.clock", "instructor", TestClass.instant(28).plus(by),
                TestClass.instant(28).plus(by), new ClassEvent.ClockShifted(1, by)));
        PlayedClass played = new PlayedClass(log);

        assertThat(played.from()).isEqualTo(TestClass.instant(8).plus(by));
        LiveClass then = played.at(TestClass.instant(21).plus(by));
        assertThat(done(then)).isEqualTo(1);
        assertThat(then.seat(new SeatNumber(1)).orElseThrow().finishes().values()).singleElement()
                .satisfies(f -> assertThat(f.at()).isEqualTo(TestClass.instant(21).plus(by)));
        assertThat(Duration.between(played.from(), played.until())).isEqualTo(Duration.ofMinutes(21));
    }
}
