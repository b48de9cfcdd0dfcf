package benchpace.words.report;

import benchpace.shelf.ShelfEntry;
import benchpace.words.Times;
import java.time.Instant;

/** How a candle on the pickup shelf stands. */
public final class ShelfBackWords {
    private ShelfBackWords() { }

    /** "collected on Saturday 6 March, 11:20", "to be collected by 11 March 2027", "overdue since 11 March 2027". */
    public static String stands(ShelfEntry entry, Instant now, Times times) {
        return switch (entry.status(now)) {
            case COLLECTED -> "collected on " + times.day(entry.collectedAt());
            case OVERDUE -> "not collected, overdue since " + times.dateOfYear(entry.collectBy());
            case SETTING, READY -> "not collected yet, kept until " + times.dateOfYear(entry.collectBy());
        };
    }
}
