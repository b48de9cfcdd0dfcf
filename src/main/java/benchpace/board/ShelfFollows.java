package benchpace.board;

import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;

/**
 * What the shelf makes of an event of a class: who is back at the table has no candle waiting there, and who was not
 * back after all has it there again. Safe to be asked again for the same event, as after an answer that was lost.
 */
public final class ShelfFollows {
    private final ShelfBoard shelf;

    /** What became of a seat's candle. */
    public enum Followed { NOTHING, OFF, ON }

    public ShelfFollows(ShelfBoard shelf) {
        this.shelf = shelf;
    }

    /** @param seq the event that a command became, just now or before */
    public Followed after(ClassBoard board, long seq) {
        LiveClass live = board.live();
        Recorded recorded = live.history().get((int) seq - 1);
        ClassEvent event = recorded.event();
        if (event instanceof ClassEvent.SeatArrived arrived) {
            return back(board, recorded, arrived.seat());
        }
        if (!(event instanceof ClassEvent.Undone undone)) {
            return Followed.NOTHING;
        }
        ClassEvent what = live.history().get((int) undone.seq() - 1).event();
        if (what instanceof ClassEvent.SeatLeft left) {
            return back(board, recorded, left.seat());
        }
        boolean gone = what instanceof ClassEvent.SeatArrived arrived
                && is(live, arrived.seat(), Seat.Presence.LEFT)
                && shelf.guestIsGone(id("gone.", board, seq), id("back.", board, undone.seq()));
        return gone ? Followed.ON : Followed.NOTHING;
    }

    private Followed back(ClassBoard board, Recorded recorded, SeatNumber seat) {
        return is(board.live(), seat, Seat.Presence.PRESENT)
                && shelf.guestIsBack(id("back.", board, recorded.seq()), board.id(), seat, recorded.recordedAt())
                ? Followed.OFF : Followed.NOTHING;
    }

    private static boolean is(LiveClass live, SeatNumber number, Seat.Presence presence) {
        return live.seat(number).filter(s -> s.presence() == presence).isPresent();
    }

    private static String id(String what, ClassBoard board, long seq) {
        return Command.own(what + board.id() + "." + seq);
    }
}
