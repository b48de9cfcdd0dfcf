package benchpace.board.view;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.CandleClock;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a page knows of a class while the board is out of reach. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class KnownClassTest {

    @Test void a_candle_may_be_tried_from_the_same_instant_on_as_on_the_board_that_says_its_range() {
        SeatNumber seat = new SeatNumber(1);
        for (int minute = 21; minute < 26; minute++) {
            LiveClass live = TestClass.atThePour(2).minute(minute).finish(1, "pour").live();
            BareClass bare = BareClass.of(live, TestClass.instant(minute + 1));

            Instant firm = bare.known().firm().get(seat);

            CandleClock clock = bare.clocks().get(seat);
            assertThat(clock.stillSets(firm.minusMillis(1))).as("poured at minute %s", minute).isTrue();
            assertThat(clock.mayBeReady(firm)).as("poured at minute %s", minute).isTrue();
        }
    }
}
