package benchpace.words;

import static benchpace.breaks.search.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.CallState;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitEvent;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitWordsTest {
    private static final ActivityId LABELS = new ActivityId("labels");
    private static final List<SeatNumber> SEATS = List.of(new SeatNumber(1));

    @Test void a_near_opening_counts_minutes_and_a_far_one_says_the_time() {
        assertThat(say(new WaitEvent.Opens(at(4), LABELS, "Label table", "", SEATS)))
                .isEqualTo("Label table in 4 min");
        assertThat(say(new WaitEvent.Opens(at(40), new ActivityId("craft"), "Short craft", "", SEATS)))
                .isEqualTo("Short craft 19:40");
    }

    @Test void readiness_and_the_beginning_of_the_wrapping_are_said_as_estimates() {
        assertThat(say(new WaitEvent.FirstReady(at(65), at(60), at(75), SEATS)))
                .isEqualTo("First candles ready from about 20:05");
        assertThat(say(new WaitEvent.WrappingFrom(at(70), new ActivityId("wrap"), "Wrapping", "", false)))
                .isEqualTo("Wrapping from about 20:10");
        assertThat(say(new WaitEvent.WrappingFrom(at(5), new ActivityId("wrap"), "Wrapping", "", true)))
                .as("no time that would move on with every minute").isEqualTo("Wrapping after the hand test");
    }

    @Test void what_has_begun_is_now_and_boxes_leave_the_candle_where_it_is() {
        assertThat(say(CallState.BEGUN, new WaitEvent.Opens(at(-2), LABELS, "Label table", "", SEATS)))
                .isEqualTo("Label table now");
        assertThat(say(CallState.BEGUN, new WaitEvent.Boxes(at(-2), LABELS, "", SEATS)))
                .isEqualTo("Fold a box or choose a ribbon now; the candle stays where it is");
    }

    @Test void a_break_that_finds_no_time_and_seats_wrapped_late_are_told_with_what_to_do() {
        List<Unplaced> unplaced = List.of(new Unplaced(LABELS, Unplaced.Reason.TOO_FEW_PLACES),
                new Unplaced(LABELS, Unplaced.Reason.NO_COMMON_TIME));
        WaitView wait = new WaitView(Optional.of(at(0)), List.of(), List.of(), List.of(), List.of(), List.of(),
                new WaitView.Idle(0, 0, 0, 0, 0), unplaced, Stream.of(2, 3, 4, 7).map(SeatNumber::new).toList());

        assertThat(WaitWords.warnings(wait)).containsExactly(
                "labels has too few places for the whole class at once: move it to a time to have it with fewer.",
                "labels finds no time when everybody is free: move it to a time, or skip it.",
                "Seats 2 to 4 and 7 are wrapped more than 10 min after the promised end: offer the pickup shelf.");
    }

    private static Instant at(int minute) {
        return Instant.parse("2026-03-02T19:00:00Z").plusSeconds(60L * minute);
    }

    private static String say(WaitEvent event) {
        return say(CallState.AHEAD, event);
    }

    private static String say(CallState state, WaitEvent event) {
        return WaitWords.say(new CallView(state, event, true), at(0), new Times(ZoneOffset.UTC));
    }
}
