package benchpace.files.calendar;

import java.time.Instant;
import java.time.LocalDate;

/**
 * One entry of a calendar file. Texts may hold anything that can be typed; the writer escapes them.
 */
public sealed interface CalendarEntry {
    /** Distinguishes the entry for good: the same entry written again replaces the old one in a calendar. */
    String uid();

    String summary();

    /** A place in words; may be empty. */
    String where();

    /** More words; may be empty. */
    String description();

    /** From one moment to another. */
    record Timed(String uid, Instant from, Instant until, String summary, String where, String description)
            implements CalendarEntry {
        public Timed {
            if (until.isBefore(from)) {
                throw new IllegalArgumentException("calendar entry \"" + summary + "\" ends before it begins");
            }
        }
    }

    /** A whole day, in whatever zone the reader is. */
    record AllDay(String uid, LocalDate day, String summary, String where, String description)
            implements CalendarEntry { }
}
