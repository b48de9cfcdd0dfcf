package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.screen.Evening;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PhrasesTest {
    private final Times times = new Times(Evening.ZONE);

    @Test void lengths_are_said_in_whole_minutes_and_hours() {
        assertThat(Phrases.length(Duration.ofSeconds(299))).isEqualTo("4 min");
        assertThat(Phrases.length(Duration.ofMinutes(60))).isEqualTo("1 h");
        assertThat(Phrases.length(Duration.ofMinutes(65))).isEqualTo("1 h 5 min");
        assertThat(Phrases.length(Duration.ofMinutes(-3))).isEqualTo("0 min");
    }

    @Test void seats_are_listed_as_people_say_them() {
        assertThat(Phrases.seats(List.of(4), 3)).isEqualTo("seat 4");
        assertThat(Phrases.seats(List.of(4, 7), 3)).isEqualTo("seats 4 and 7");
        assertThat(Phrases.seats(List.of(1, 2, 5), 3)).isEqualTo("seats 1, 2 and 5");
        assertThat(Phrases.seats(List.of(1, 2, 5, 6), 3)).isEqualTo("4 seats");
    }

    @Test void an_estimate_is_said_on_the_next_full_five_minutes() {
        assertThat(times.roughly(Instant.parse("2027-03-04T19:07:00Z"))).isEqualTo("20:10");
        assertThat(times.roughly(Instant.parse("2027-03-04T19:10:00Z"))).isEqualTo("20:10");
        assertThat(times.roughly(Instant.parse("2027-03-04T22:56:00Z"))).isEqualTo("00:00");
    }

    @Test void clock_times_are_those_of_the_room() {
        assertThat(times.clock(Instant.parse("2027-07-04T18:00:00Z"))).isEqualTo("20:00");
        assertThat(times.day(Evening.START)).isEqualTo("Thursday 4 March, 19:00");
    }
}
