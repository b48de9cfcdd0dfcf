package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.plan.SeatNumber;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.words.Times;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** No tile lets one tap say of liquid wax that it is ready to be handled. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LiquidWaxTileTest {
    private static SeatTile tile(ClassView view, int seat) {
        return SeatTile.of(view.seat(seat), view, new Times(view.zone()));
    }

    @Test void a_tile_at_the_wrapping_whose_candle_was_poured_again_asks_before_its_new_range() {
        Evening evening = Evenings.trimOpens().done(104, "trim", 1, 2);
        assertThat(tile(evening.view(105), 1).triedFrom()).isEmpty();

        evening.event(106, new ClassEvent.PouredAgain(new SeatNumber(1)));

        ClassView again = evening.view(107);
        assertThat(tile(again, 1).canFinish()).isTrue();
        assertThat(Instant.parse(tile(again, 1).triedFrom())).isAfter(again.now());
        assertThat(tile(again, 2).triedFrom()).isEmpty();
    }
}
