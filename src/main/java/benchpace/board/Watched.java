package benchpace.board;

import benchpace.board.cooling.CutAway;
import benchpace.board.view.ClassView;
import benchpace.board.view.Playing;
import benchpace.live.LiveClass;
import java.time.Instant;
import java.util.Optional;

/**
 * A class as screens look at it: one that the board holds, or one that is played back. Nothing can be written through
 * it, so whoever is given no more changes nothing.
 */
public interface Watched {
    /** In addresses. */
    String id();

    LiveClass live();

    /** The time that its screens go by. */
    Instant now();

    /** As it is now; up to 5 s old while nothing has happened and nothing was due to change. */
    ClassView view();

    /** A seat's candle cut open as it should be this instant, where that is computed. */
    Optional<CutAway> cutAway(int seat);

    /** A screen's own mailbox; it holds the newest view at once. */
    Mailbox subscribe();

    /** It is there no more: its screens have ended for good. */
    boolean isDeleted();

    /** How it is played back; empty for a class. */
    default Optional<Playing> playing() {
        return Optional.empty();
    }
}
