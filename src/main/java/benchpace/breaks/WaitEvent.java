package benchpace.breaks;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;

/** Something to call out and count down to. Seats are in ascending order. */
public sealed interface WaitEvent {
    Instant at();

    List<SeatNumber> seats();

    /** What the activity is called; empty where it is about candles or boxes. */
    default String name() {
        return "";
    }

    /** Where; may be empty. */
    default String where() {
        return "";
    }

    /** An own-pace activity takes these seats from this moment on. */
    record Opens(Instant at, ActivityId activity, String name, String where, List<SeatNumber> seats)
            implements WaitEvent {
        public Opens {
            seats = List.copyOf(seats);
        }
    }

    /** The class breaks together. {@code leftOut} names the seats that cannot take part. */
    record ClassBreak(Instant at, Instant until, ActivityId activity, String name, String where,
                      List<SeatNumber> seats, List<SeatNumber> leftOut) implements WaitEvent {
        public ClassBreak {
            seats = List.copyOf(seats);
            leftOut = List.copyOf(leftOut);
        }
    }

    /** About when the first candles are ready: an estimate; the instructor's hand test decides. */
    record FirstReady(Instant at, Instant earliest, Instant latest, List<SeatNumber> seats) implements WaitEvent {
        public FirstReady {
            seats = List.copyOf(seats);
        }
    }

    /**
     * About when wrapping can begin: a forecast, which names no seat as none is judged set and ready for it.
     *
     * @param due whether a candle is due to be tried, so that it hangs on the hand test and {@code at} moves on with it
     */
    record WrappingFrom(Instant at, ActivityId activity, String name, String where, boolean due)
            implements WaitEvent {
        @Override public List<SeatNumber> seats() {
            return List.of();
        }
    }

    /** These seats, every candle of theirs judged set by hand, have their turn at the wrapping. */
    record Wrapping(Instant at, ActivityId activity, String name, String where, List<SeatNumber> seats)
            implements WaitEvent {
        public Wrapping {
            seats = List.copyOf(seats);
        }
    }

    /**
     * Since then these seats wait for the hand test and may see to what their candle will be wrapped in; the candle
     * stays where it is.
     */
    record Boxes(Instant at, ActivityId activity, String where, List<SeatNumber> seats) implements WaitEvent {
        public Boxes {
            seats = List.copyOf(seats);
        }
    }
}
