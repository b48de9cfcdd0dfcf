package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.pacing.Eased;
import benchpace.board.pacing.SeatFlag;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A flag in one line that a person would say. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FlagWordsTest {
    private static SeatFlag flag(SeatFlag.Level level, String step, int over, int price) {
        return new SeatFlag(level, 4, step, over, price);
    }

    @Test void a_seat_that_may_be_slow_is_asked_about() {
        assertThat(FlagWords.reason(flag(SeatFlag.Level.SLIPPING, "Wicks", 3, 2))).isEqualTo("Seat 4: still on wicks?");
    }

    @Test void a_seat_behind_is_told_with_its_minutes_and_what_they_cost_everyone() {
        assertThat(FlagWords.reason(flag(SeatFlag.Level.BEHIND, "Wicks", 7, 5)))
                .isEqualTo("Seat 4: wicks, 7 min longer than this table needs. "
                        + "If it goes on, everyone leaves 5 min later.");
    }

    @Test void what_costs_nobody_a_minute_has_no_price() {
        assertThat(FlagWords.reason(flag(SeatFlag.Level.BEHIND, "Wicks", 3, 0)))
                .isEqualTo("Seat 4: wicks, 3 min longer than this table needs.");
    }

    @Test void a_seat_that_is_not_over_its_time_is_not_said_to_take_longer() {
        assertThat(FlagWords.reason(flag(SeatFlag.Level.BEHIND, "Wicks", 0, 5)))
                .isEqualTo("Seat 4: wicks, seems stuck. If it goes on, everyone leaves 5 min later.");
    }

    @Test void a_name_of_several_words_or_with_more_capitals_stays_as_it_is_written() {
        assertThat(FlagWords.reason(flag(SeatFlag.Level.SLIPPING, "Cut the wick", 1, 0)))
                .isEqualTo("Seat 4: still on Cut the wick?");
        assertThat(FlagWords.reason(flag(SeatFlag.Level.SLIPPING, "QR", 1, 0))).isEqualTo("Seat 4: still on QR?");
    }

    @Test void a_seat_that_was_just_sorted_is_said_to_be_still_slow_with_who_was_there_and_when() {
        Eased eased = new Eased(flag(SeatFlag.Level.BEHIND, "Wicks", 9, 4), "MO",
                Instant.parse("2026-03-02T19:16:30Z"));

        assertThat(FlagWords.eased(eased, ZoneOffset.UTC)).isEqualTo("Seat 4 is still slow; MO sorted it at 19:16.");
    }
}
