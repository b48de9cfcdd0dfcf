package benchpace.board.view;

import java.time.Instant;
import java.util.Optional;

/**
 * A class that cannot be read back and holds names of guests, or may.
 *
 * @param last  when something was written down of it last; empty if nobody can tell
 * @param stuck some of it cannot be told apart, so that only deleting the class takes the names away
 */
public record NamesKept(String classId, Optional<Instant> last, boolean stuck) { }
