package benchpace;

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

    private Logs() { }

    static void quieten() {
        if (System.getProperty("java.util.logging.config.file") == null) {
            System.setProperty("java.util.logging.SimpleFormatter.format", "%1$tT %4$s %5$s%6$s%n");
            ROOT.setLevel(Level.WARNING);
            SERVER.setLevel(Level.SEVERE);
            NAMES.setLevel(Level.OFF);
            START.setFilter(line -> !String.valueOf(line.getMessage()).startsWith("Failed to start"));
        }
    }
}
