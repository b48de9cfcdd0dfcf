package benchpace.web.screen.wall;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.CutAway;
import benchpace.board.cooling.SaidRange.Phase;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.cure.solver.CandleSection;
import benchpace.files.Words;
import benchpace.words.CureWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.Optional;

/**
 * One candle on the wall, by its seat's number.
 *
 * @param clock empty before its pour
 * @param solid how much of the wax is solid, 0 to 1; empty where nothing is computed of it
 * @param drawn empty where candles are too many to be drawn
 * @param words how it stands, for who cannot see it
 */
public record WallCandle(int seat, State state, Optional<CandleClock> clock, Optional<Double> solid,
                         Optional<SmallCandle> drawn, String words) {

    /** How a candle stands: each is told apart by its shape. */
    public enum State {
        /** Nothing is poured. */
        EMPTY,
        /** Its range has not begun. */
        SETTING,
        /** It is inside its range. */
        MAY_BE,
        /** It is past its range. */
        TRY_IT,
        /** A hand has decided. */
        SET;

        /** As it stands in class names of the style sheet. */
        public String token() {
            return Words.of(this);
        }

        static State of(Optional<CandleClock> clock, Instant now) {
            return clock.map(c -> c.settled() ? SET : c.tryIt(now) ? TRY_IT : c.phase(now) == Phase.INSIDE ? MAY_BE
                    : SETTING).orElse(EMPTY);
        }
    }

    private static final double WAX = 14;

    /** @param vessels the class's vessels, all drawn to one scale; empty where none is drawn */
    static WallCandle of(SeatView seat, ClassView view, Optional<SmallCandle.Vessels> vessels, Times times) {
        State state = State.of(seat.candle(), view.now());
        Optional<CandleSection> section = Optional.ofNullable(view.room().cutOpen().get(seat.seat()))
                .map(CutAway::section);
        return new WallCandle(seat.seat(), state, seat.candle(), section.map(CandleSection::solidFraction),
                vessels.map(v -> v.of(seat.seat(), section)),
                CureWords.ofSeat(seat.seat(), seat.candle(), view.now(), times));
    }

    /** It is waited for, before its range or inside it. */
    boolean waits() {
        return state == State.SETTING || state == State.MAY_BE;
    }

    /** Where candles are too many to be drawn: a square in one of 14, its share of it what of the wax is liquid. */
    public String core() {
        return SmallCandle.square(WAX * Math.sqrt(1 - solid.orElse(1.0)));
    }
}
