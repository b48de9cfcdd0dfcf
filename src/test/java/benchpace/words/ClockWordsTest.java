package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.time.ImpossibleClock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClockWordsTest {
    @Test void a_clock_that_cannot_be_right_is_told_with_the_day_it_shows_and_what_to_do() {
        ImpossibleClock clock = new ImpossibleClock(Instant.parse("1970-01-01T00:00:07Z"));

        assertThat(ClockWords.of(clock, ZoneOffset.UTC))
                .isEqualTo("The computer's clock says 1 January 1970. Set it right, then set up the class.");
    }
}
