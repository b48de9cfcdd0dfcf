package benchpace.web.screen.instructor;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.CureDetail;
import benchpace.board.cooling.CutAway;
import benchpace.board.cooling.ReadyWindow;
import benchpace.board.cooling.RoomView;
import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.web.screen.shell.CutDrawing;
import benchpace.words.Times;
import java.util.List;
import java.util.Optional;

/**
 * The computed part of a seat's candle on its sheet. When it is firm is said above, as every screen says it.
 *
 * @param choices what it may make; empty if nothing is computed
 * @param chosen  the id of what it makes
 * @param skin    "19:20 to 19:35"; empty if not computed, or once a hand has decided
 * @param cut     the candle cut open; empty before the pour and once a hand has decided
 */
public record SheetCandle(List<RoomView.Choice> choices, String chosen, String skin, Optional<CutDrawing> cut) {

    static SheetCandle of(ClassView view, SeatView seat, Optional<CutAway> cut, Times times) {
        RoomView room = view.room();
        String first = room.candles().isEmpty() ? "" : room.candles().get(0).id();
        Optional<CureDetail> detail = seat.candle().flatMap(CandleClock::detail);
        return new SheetCandle(room.candles(), room.chosen().getOrDefault(seat.seat(), first),
                words(detail.flatMap(CureDetail::skin), times),
                cut.map(c -> CutDrawing.of(c, "sheet-cut")));
    }

    private static String words(Optional<ReadyWindow> window, Times times) {
        return window.map(SaidRange::of).map(times::said).orElse("");
    }

    public boolean computed() {
        return !skin.isEmpty();
    }
}
