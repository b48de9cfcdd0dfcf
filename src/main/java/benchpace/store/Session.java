package benchpace.store;

import java.time.Instant;

/**
 * A device that was let in.
 *
 * @param role     what it may do, as the access check names it
 * @param label    a helper's initials; may be empty
 * @param lastSeen when it last asked for something, to within some minutes
 * @param mark     tells this device's taps from others'; public, for nothing can be opened with it
 * @param name     what people call it; may be empty
 */
public record Session(String role, String label, Instant created, Instant lastSeen, String mark, String name) { }
