package benchpace.words;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** What is said of the folder that everything is kept in, and of copies of it. */
public final class BackupWords {
    private static final double MEBIBYTE = 1024 * 1024;

    private static final int LONG_AGO_DAYS = 14;

    private BackupWords() { }

    /** What is in a backup: "12 classes with 3,411 events, 2 plans of yours, the pickup shelf, and ...". */
    public static String of(long classes, long events, long plans) {
        return counted(classes, "class", "classes") + " with " + counted(events, "event", "events") + ", "
                + counted(plans, "plan", "plans") + " of yours, the pickup shelf, and what rooms and steps have "
                + "taught";
    }

    private static String counted(long number, String one, String many) {
        return number == 0 ? "no " + many : String.format(Locale.ENGLISH, "%,d ", number) + (number == 1 ? one : many);
    }

    /** What can be fetched. */
    public static String ready(long classes, long events, long plans, long unreadable) {
        return ("Made and read back whole: " + of(classes, events, plans) + ". " + unreadable(unreadable)).strip();
    }

    /** @param why one sentence; empty if it is the board's own mistake */
    public static String failed(String why) {
        return "No backup was made. " + (why.isEmpty() ? "The board made a mistake and has noted it; try again." : why);
    }

    /** Said besides where some of it cannot be read; empty if all can. */
    public static String unreadable(long classes) {
        return classes == 0 ? "" : counted(classes, "class", "classes") + (classes == 1
                ? " cannot be read on this board; it is in the backup as it is."
                : " cannot be read on this board; they are in the backup as they are.");
    }

    /** How far it is, in bytes: "Copying: 12.0 MB of about 150 MB". */
    public static String copying(long done, long of) {
        return "Copying: " + size(done) + " of about " + size(of);
    }

    public static String addingUp(long records, long of) {
        return String.format(Locale.ENGLISH, "Adding up: %,d of %,d records", records, of);
    }

    public static String readingBack(long classes, long of) {
        return String.format(Locale.ENGLISH, "Reading back: %,d of %,d classes", classes, of);
    }

    /** When the last one was made, in a calm sentence. */
    public static String last(Optional<Instant> last, Instant now, Times times) {
        return last.map(at -> "The last backup was made " + inside(times.dayFrom(at, now)) + ago(at, now) + ".")
                .orElse("No backup was made yet.");
    }

    private static String inside(String moment) {
        return moment.startsWith("Today") ? "today" + moment.substring("Today".length()) : "on " + moment;
    }

    private static String ago(Instant at, Instant now) {
        long days = Duration.between(at, now).toDays();
        return days < 2 ? "" : ", " + days + " days ago";
    }

    /** A gentle word after two weeks without one, where there is something to lose; else empty. */
    public static String due(Optional<Instant> last, Instant now, boolean anyClass) {
        boolean recent = last.filter(at -> Duration.between(at, now).toDays() < LONG_AGO_DAYS).isPresent();
        return recent || !anyClass ? "" : last.isEmpty()
                ? "Your classes are on this computer alone. A backup on another disk outlives it."
                : "It is time for a new one: what came after it is on this computer alone.";
    }

    /** "3.2 MB", as file managers say it; "less than 0.1 MB". */
    public static String size(long bytes) {
        double megabytes = bytes / MEBIBYTE;
        return megabytes < 0.1 ? "less than 0.1 MB"
                : String.format(Locale.ROOT, megabytes < 100 ? "%.1f MB" : "%.0f MB", megabytes);
    }
}
