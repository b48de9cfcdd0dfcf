package benchpace.store;

import java.time.Instant;

/**
 * A device that was let in.
 *
 * @param role  what it may do, as the access check names it
 * @param label what people read: a device, or a helper's initials; may be empty
 * @param mark  tells this device's taps from others'; public, for nothing can be opened with it
 */
public record Session(String role, String label, Instant created, String mark) { }
