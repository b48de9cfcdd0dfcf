package benchpace.store;

import java.time.Instant;
import java.util.Optional;

/**
 * What a class that cannot be read back holds of the words of its guests.
 *
 * @param erasable how many of its events have words that can be taken out of them
 * @param stuck    how many may have some that cannot be told from the rest
 * @param last     when something was written down of it last; empty if nothing was, or none can tell
 * @param until    that, or when it was to begin or to end, whichever is last: it may have been set up long before
 */
public record KeptWords(int erasable, int stuck, Optional<Instant> last, Optional<Instant> until) { }
