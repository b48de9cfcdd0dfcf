package benchpace.live;

import java.time.Instant;

/**
 * An event as it stands in the log.
 *
 * @param seq        its number in the class, from 1 without gaps
 * @param commandId  the text that names the command behind it, unique in the class
 * @param by         who said so: a role, or a helper's initials
 * @param device     the mark of the device it was tapped on, so that each takes back its own; empty for what no device
 *                   said, and for what was written down before devices were told apart
 * @param at         when it happened in the room; may precede {@code recordedAt}
 * @param recordedAt when the board wrote it down; never earlier than that of the event before, once clocks were set
 *                   right ({@link LiveClass#history})
 */
public record Recorded(long seq, String commandId, String by, String device, Instant at, Instant recordedAt,
                       ClassEvent event) {
    public Recorded {
        if (seq < 1) {
            throw new IllegalArgumentException("events are numbered from 1, not " + seq);
        }
    }

    /** Of no device that is known. */
    public Recorded(long seq, String commandId, String by, Instant at, Instant recordedAt, ClassEvent event) {
        this(seq, commandId, by, "", at, recordedAt, event);
    }

    Recorded at(Instant corrected) {
        return new Recorded(seq, commandId, by, device, corrected, recordedAt, event);
    }

    Recorded event(ClassEvent corrected) {
        return new Recorded(seq, commandId, by, device, at, recordedAt, corrected);
    }
}
