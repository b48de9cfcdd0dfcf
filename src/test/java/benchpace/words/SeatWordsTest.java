package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.SeatView.Mark;
import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import benchpace.plan.TableShape;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** How a seat stands and where it is, in a few words. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SeatWordsTest {

    @Test void every_mark_has_a_word() {
        assertThat(Arrays.stream(Mark.values()).map(SeatWords::mark)).containsExactly("on pace", "slipping", "behind",
                "slow", "waits its turn", "waiting", "listening", "paused", "not here yet", "left", "shares",
                "setting", "try it", "at leisure", "set", "done");
    }

    @Test void a_place_is_told_as_the_instructor_sees_it() {
        SeatingChart chart = SeatingChart.of(TableShape.LONG_TABLE, 6);

        assertThat(IntStream.rangeClosed(1, 6).mapToObj(n -> SeatWords.place(chart, new SeatNumber(n))))
                .containsExactly("back left", "back middle", "back right", "front right", "front middle", "front left");
    }

    @Test void up_to_six_seats_that_are_not_done_are_named() {
        assertThat(SeatWords.notDone(List.of())).isEmpty();
        assertThat(SeatWords.notDone(List.of(4))).isEqualTo("Seat 4 is not done yet.");
        assertThat(SeatWords.notDone(List.of(1, 4, 6))).isEqualTo("Seats 1, 4 and 6 are not done yet.");
        assertThat(SeatWords.notDone(List.of(1, 2, 3, 4, 5, 6, 7))).isEqualTo("7 seats are not done yet.");
    }
}
