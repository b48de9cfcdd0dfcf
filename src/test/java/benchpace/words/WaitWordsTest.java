package benchpace.words;

import static benchpace.breaks.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.Evenings;
import benchpace.breaks.WaitEvent;
import benchpace.plan.SeatNumber;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitWordsTest {
    private static final List<SeatNumber> SEATS = List.of(new SeatNumber(1));

    @Test void a_near_opening_counts_minutes_and_a_far_one_says_the_time() {
        assertThat(say(new WaitEvent.Opens(at(4), Evenings.id("labels"), "Label table", "", SEATS)))
                .isEqualTo("Label table in 4 min");
        assertThat(say(new WaitEvent.Opens(at(40), Evenings.id("craft"), "Short craft", "", SEATS)))
                .isEqualTo("Short craft 19:40");
    }

    @Test void readiness_and_the_beginning_of_the_wrapping_are_said_as_estimates() {
        assertThat(say(new WaitEvent.FirstReady(at(65), at(60), at(75), SEATS)))
                .isEqualTo("First candles ready from about 20:05");
        assertThat(say(new WaitEvent.WrappingFrom(at(70), Evenings.id("wrap"), "Wrapping", "", false)))
                .isEqualTo("Wrapping from about 20:10");
        assertThat(say(new WaitEvent.WrappingFrom(at(5), Evenings.id("wrap"), "Wrapping", "", true)))
                .as("no time that would move on with every minute").isEqualTo("Wrapping after the hand test");
    }

    @Test void seats_are_told_in_runs() {
        assertThat(who(1, 2, 3, 4, 7)).isEqualTo("seats 1 to 4 and 7");
        assertThat(who(3)).isEqualTo("seat 3");
        assertThat(who(2, 3)).isEqualTo("seats 2 and 3");
        assertThat(who(1, 3, 5, 6, 7)).isEqualTo("seats 1, 3 and 5 to 7");
    }

    private static String who(int... seats) {
        return WaitWords.who(IntStream.of(seats).mapToObj(SeatNumber::new).toList());
    }

    private static String say(WaitEvent event) {
        return WaitWords.say(event, at(0), ZoneOffset.UTC);
    }
}
