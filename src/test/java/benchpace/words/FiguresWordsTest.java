package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What is said of the figures of one class. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FiguresWordsTest {
    private static final Times TIMES = new Times(ZoneOffset.UTC);
    private static final Instant EIGHT = Instant.parse("2027-03-04T20:00:00Z");

    private static Instant after(double minutes) {
        return EIGHT.plusSeconds(Math.round(60 * minutes));
    }

    private static String ready(ReadyBy by, double minutes) {
        return FiguresWords.ready(by, after(minutes), after(-5), Optional.of(EIGHT), TIMES);
    }

    @Test void the_end_is_told_against_the_promise() {
        assertThat(FiguresWords.ended(after(7), EIGHT, TIMES))
                .isEqualTo("The class ended at 20:07, 7 min after the promised 20:00.");
    }

    @Test void the_last_candle_is_told_as_a_hand_told_of_it() {
        assertThat(ready(ReadyBy.HAND_TEST, -3))
                .isEqualTo("The last candle was judged set at 19:57, 2 min after the planned 19:55.");
        assertThat(ready(ReadyBy.NEXT_STEP, -5))
                .isEqualTo("The last candle was set by 19:55, just at the planned 19:55.");
        assertThat(ready(ReadyBy.NOBODY, -3))
                .isEqualTo("Nobody told when the last candle was set; it was planned for 19:55.");
        assertThat(FiguresWords.nonePoured()).isEqualTo("No candle was poured.");
    }

    @Test void a_hand_test_on_record_after_the_end_is_said_to_have_been_after_it() {
        assertThat(ready(ReadyBy.HAND_TEST, 4)).isEqualTo("The last candle was judged set at 20:04, after the class "
                + "ended and 9 min after the planned 19:55.");
        assertThat(ready(ReadyBy.HAND_TEST, 0.7)).as("within the minute no clock shows it")
                .isEqualTo("The last candle was judged set at 20:00, 5 min after the planned 19:55.");
    }

    @Test void idle_minutes_are_told_with_those_who_waited() {
        assertThat(FiguresWords.idle(8, 16)).isEqualTo("16 idle minutes in the wait of 8 seats.");
        assertThat(FiguresWords.idle(1, 1)).isEqualTo("One idle minute in the wait of 1 seat.");
        assertThat(FiguresWords.idle(8, 0)).isEqualTo("No idle minute in the wait of 8 seats.");
        assertThat(FiguresWords.idle(0, 0)).isEmpty();
    }

    @Test void flags_are_told_with_those_that_were_wrong() {
        assertThat(FiguresWords.flags(new FlagFigures(5, 4, OptionalDouble.of(2), 1)))
                .isEqualTo("5 flags, 4 answered, half of them within 2 min. One was wrong in hindsight.");
        assertThat(FiguresWords.flags(new FlagFigures(1, 1, OptionalDouble.of(2), 1)))
                .isEqualTo("One flag, answered, after 2 min. It was wrong in hindsight.");
        assertThat(FiguresWords.flags(FlagFigures.NONE)).isEqualTo("Nobody was flagged.");
    }

    @Test void hand_tests_are_told_against_what_was_said_at_the_pour() {
        assertThat(cures(4, 3, -2)).isEqualTo("3 of 4 hand tests came within what was said at the pour, in the mean "
                + "2 min sooner than likely.");
        assertThat(cures(4, 4, 0.2)).isEqualTo("All 4 hand tests came within what was said at the pour, in the mean "
                + "just when likely.");
        assertThat(cures(4, 0, 9)).startsWith("None of 4 hand tests came within ");
        assertThat(cures(1, 0, 9)).isEqualTo("The one hand test came outside what was said at the pour, 9 min later "
                + "than likely.");
        assertThat(FiguresWords.cures(CureFigures.NONE)).isEmpty();
    }

    private static String cures(int judged, int within, double later) {
        return FiguresWords.cures(new CureFigures(judged, within, OptionalDouble.of(later)));
    }
}
