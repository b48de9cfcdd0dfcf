package benchpace.board.view;

import java.time.Instant;
import java.util.Optional;

/**
 * A class that cannot be read back and holds names of guests, or may.
 *
 * @param last  when something was written down of it last; empty if nobody can tell
 * @param until that, or the time it was set up for, whichever is later: what its guests' days count from
 * @param stuck some of it cannot be told apart, so that only deleting the class takes the names away
 */
public record NamesKept(String classId, Optional<Instant> last, Optional<Instant> until, boolean stuck) { }
