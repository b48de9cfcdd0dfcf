package benchpace;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;

/** Keeps in memory what was logged last, a line each, for whoever asks about a fault; nothing of it is written. */
final class RecentLines extends Handler {
    /** The last few hundred tell what happened; the first of a flood would be no more telling. */
    static final int MOST = 400;
    private static final int LONGEST = 1_000;

    private final Deque<String> lines = new ArrayDeque<>();

    RecentLines() {
        setFormatter(new LogLine(false));
    }

    @Override public synchronized void publish(LogRecord record) {
        if (!isLoggable(record)) {
            return;
        }
        if (lines.size() == MOST) {
            lines.removeFirst();
        }
        String line = getFormatter().format(record).strip();
        lines.addLast(line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line);
    }

    /** The oldest first. */
    synchronized List<String> lines() {
        return List.copyOf(lines);
    }

    @Override public void flush() {
        // it is in memory
    }

    @Override public void close() {
        // nothing is held
    }
}
