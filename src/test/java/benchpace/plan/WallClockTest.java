package benchpace.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times in the nights in which clocks are set. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WallClockTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static String words(String at) {
        return WallClock.words(Instant.parse(at), BERLIN);
    }

    @Test void on_any_other_day_it_is_the_time_alone() {
        assertThat(words("2026-10-24T22:30:00Z")).isEqualTo("00:30");
        assertThat(WallClock.brief(Instant.parse("2027-03-04T18:30:00Z"), BERLIN)).isEqualTo("19:30");
    }

    @Test void the_hour_that_comes_twice_says_which_it_is() {
        assertThat(words("2026-10-24T23:59:59Z")).isEqualTo("01:59");
        assertThat(words("2026-10-25T00:00:00Z")).isEqualTo("02:00 summer time");
        assertThat(words("2026-10-25T00:45:00Z")).isEqualTo("02:45 summer time");
        assertThat(words("2026-10-25T01:25:00Z")).isEqualTo("02:25 winter time");
        assertThat(words("2026-10-25T02:00:00Z")).isEqualTo("03:00");
        assertThat(WallClock.brief(Instant.parse("2026-10-25T00:45:00Z"), BERLIN)).isEqualTo("02:45 summer");
    }

    @Test void so_does_any_other_form_that_ends_with_the_time() {
        DateTimeFormatter day = DateTimeFormatter.ofPattern("EEEE d MMMM, HH:mm", Locale.ENGLISH);
        assertThat(WallClock.words(day, Instant.parse("2026-10-25T01:25:00Z"), BERLIN))
                .isEqualTo("Sunday 25 October, 02:25 winter time");
    }

    @Test void the_hour_that_is_left_out_in_spring_needs_no_word() {
        assertThat(words("2027-03-28T00:59:00Z")).isEqualTo("01:59");
        assertThat(words("2027-03-28T01:00:00Z")).isEqualTo("03:00");
    }

    @Test void where_a_country_changed_its_time_for_good_it_says_old_and_new() {
        ZoneId moscow = ZoneId.of("Europe/Moscow");
        assertThat(WallClock.words(Instant.parse("2014-10-25T21:30:00Z"), moscow)).isEqualTo("01:30 old time");
        assertThat(WallClock.words(Instant.parse("2014-10-25T22:30:00Z"), moscow)).isEqualTo("01:30 new time");
    }

    /** All ranges of up to three hours that begin in the twelve hours around a change. */
    @ParameterizedTest @CsvSource({"Europe/Berlin, 2026-10-25T01:00:00Z", "Europe/Berlin, 2027-03-28T01:00:00Z",
            "America/New_York, 2026-11-01T06:00:00Z", "Australia/Lord_Howe, 2027-04-03T15:00:00Z",
            "UTC, 2026-10-25T01:00:00Z"})
    void no_range_reads_as_if_it_ran_backwards(ZoneId zone, Instant change) {
        for (int from = -360; from <= 360; from += 5) {
            for (int length = 5; length <= 180; length += 5) {
                Instant begins = change.plusSeconds(from * 60L);
                Instant ends = begins.plusSeconds(length * 60L);
                assertThat(forwards(WallClock.words(begins, zone), WallClock.words(ends, zone)))
                        .as("%s to %s", begins, ends).isTrue();
                assertThat(forwards(WallClock.brief(begins, zone), WallClock.brief(ends, zone))).isTrue();
            }
        }
    }

    /** By the figures, past midnight included, or by the words. */
    private static boolean forwards(String from, String to) {
        boolean said = from.contains("summer") && to.contains("winter");
        int minutes = LocalTime.parse(to.substring(0, 5)).toSecondOfDay() / 60
                - LocalTime.parse(from.substring(0, 5)).toSecondOfDay() / 60;
        return said || minutes > 0 || minutes < -12 * 60;
    }
}
