package benchpace;

import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What is logged goes to standard error, and only what somebody should look at. */
final class Logs {
    private static final Logger ROOT = Logger.getLogger("");
    /** Warns about every malformed request, which is the sender's trouble and answered as such. */
    private static final Logger SERVER = Logger.getLogger("org.eclipse.jetty");
    /** Says "Failed to start" beside the exception that says why, which is told in one sentence. */
    private static final Logger START = Logger.getLogger("io.javalin.Javalin");

    /** Warns of networks that it cannot use, which are no fault: the board is then reached by its address. */
    private static final Logger NAMES = Logger.getLogger("javax.jmdns");

    /** Logs what it throws as well; the start says it in one sentence. */
    private static final Logger LIBRARY = Logger.getLogger("org.sqlite.SQLiteJDBCLoader");

    /** Made once the levels are set: what it needs logs, too. */
    private static final class Recent {
        static final RecentLines LINES = new RecentLines();
    }

    private Logs() { }

    /** What was logged last, the oldest first. */
    static List<String> recent() {
        return Recent.LINES.lines();
    }

    /** @param debug whether traces are shown */
    static void quieten(boolean debug) {
        if (System.getProperty("java.util.logging.config.file") == null) {
            ROOT.setLevel(Level.WARNING);
            for (Handler handler : ROOT.getHandlers()) {
                handler.setFormatter(new LogLine(debug));
            }
            ROOT.addHandler(Recent.LINES);
            SERVER.setLevel(Level.SEVERE);
            NAMES.setLevel(Level.OFF);
            LIBRARY.setLevel(Level.OFF);
            START.setFilter(line -> !String.valueOf(line.getMessage()).startsWith("Failed to start"));
        }
    }
}
