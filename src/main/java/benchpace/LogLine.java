package benchpace;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.logging.Formatter;
import java.util.logging.LogRecord;

/** What is logged is one line; where a failure arose is told in a few words, and with {@code --debug} in full. */
final class LogLine extends Formatter {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT).withZone(ZoneId.systemDefault());

    private final boolean debug;

    LogLine(boolean debug) {
        this.debug = debug;
    }

    @Override public String format(LogRecord record) {
        String line = TIME.format(record.getInstant()) + " " + record.getLevel().getName() + " "
                + formatMessage(record);
        Throwable thrown = record.getThrown();
        return (thrown == null ? line : line + " (" + brief(thrown) + ")").replaceAll("\\R", " ")
                + System.lineSeparator() + (debug && thrown != null ? trace(thrown) : "");
    }

    /** What it says, for whoever runs the board, and where it arose, for whoever mends it; on one line. */
    static String brief(Throwable thrown) {
        StackTraceElement[] frames = thrown.getStackTrace();
        String where = frames.length == 0 ? "" : ", " + frames[0].getFileName() + ":" + frames[0].getLineNumber();
        String said = thrown.getMessage() == null ? thrown.getClass().getSimpleName() : thrown.getMessage();
        return said.replaceAll("\\R", " ").replaceAll("\\.$", "") + where + "; --debug shows more";
    }

    private static String trace(Throwable thrown) {
        StringWriter text = new StringWriter();
        thrown.printStackTrace(new PrintWriter(text, true));
        return text.toString();
    }
}
