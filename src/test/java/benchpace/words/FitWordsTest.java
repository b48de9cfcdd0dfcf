package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.Observation;
import benchpace.board.cooling.Observation.Kind;
import benchpace.board.cooling.Refit;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FitWordsTest {
    private static String words(Kind kind, Optional<Integer> seat, OptionalDouble later) {
        return FitWords.of(new Refit(new Observation(kind, seat.map(SeatNumber::new), Instant.EPOCH, 0), later, true));
    }

    @Test void what_was_seen_at_a_candle_says_by_how_much_it_moved_the_others() {
        assertThat(words(Kind.SURFACE, Optional.of(3), OptionalDouble.of(-4.2)))
                .isEqualTo("Room refitted from the reading at seat 3: candles about 4 min sooner.");
        assertThat(words(Kind.JUDGED_SET, Optional.of(1), OptionalDouble.of(6.6)))
                .isEqualTo("Room refitted from the hand test at seat 1: candles about 7 min later.");
        assertThat(words(Kind.SKIN, Optional.of(2), OptionalDouble.of(0.4)))
                .isEqualTo("Room refitted from the skin seen at seat 2: it fits what was expected, within a minute.");
        assertThat(words(Kind.JUDGED_SET, Optional.of(8), OptionalDouble.empty()))
                .isEqualTo("The room has learned from the hand test at seat 8.");
    }

    @Test void a_thermometer_that_changes_nothing_is_not_spoken_of() {
        assertThat(words(Kind.ROOM, Optional.empty(), OptionalDouble.of(-1.2)))
                .isEqualTo("Recomputed from the room's thermometer: candles about 1 min sooner.");
        assertThat(words(Kind.POUR, Optional.empty(), OptionalDouble.of(0.2))).isEmpty();
        assertThat(words(Kind.ROOM, Optional.empty(), OptionalDouble.empty())).isEmpty();
    }
}
