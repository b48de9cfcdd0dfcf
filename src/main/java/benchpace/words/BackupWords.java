package benchpace.words;

import java.util.Locale;

/** What is said of the folder that everything is kept in, and of copies of it. */
public final class BackupWords {
    private static final double MEBIBYTE = 1024 * 1024;

    private BackupWords() { }

    /** "3.2 MB", as file managers say it; "less than 0.1 MB". */
    public static String size(long bytes) {
        double megabytes = bytes / MEBIBYTE;
        return megabytes < 0.1 ? "less than 0.1 MB"
                : String.format(Locale.ROOT, megabytes < 100 ? "%.1f MB" : "%.0f MB", megabytes);
    }
}
