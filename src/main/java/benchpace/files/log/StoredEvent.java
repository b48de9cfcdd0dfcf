package benchpace.files.log;

import benchpace.live.Recorded;
import java.time.Instant;

/** An event as the store holds it, whether it can be read back or not. */
public sealed interface StoredEvent {
    /** One that can. */
    record Sound(Recorded event) implements StoredEvent { }

    /**
     * One that cannot: a newer board's, or damaged.
     *
     * @param payload what it says, as it stands there
     */
    record Unreadable(long seq, String type, Instant at, Instant recordedAt, String by, String device, String payload)
            implements StoredEvent { }
}
