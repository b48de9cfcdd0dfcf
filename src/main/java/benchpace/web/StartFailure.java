package benchpace.web;

import java.net.BindException;

/** The board cannot be opened; the message is one plain sentence for whoever starts it. */
public final class StartFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private StartFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    static StartFailure of(String host, int port, Throwable cause) {
        for (Throwable t = cause; t != null; t = t.getCause()) {
            String text = String.valueOf(t.getMessage());
            if (t instanceof BindException || text.contains("already in use")) {
                return new StartFailure(text.contains("assign requested")
                        ? "This machine has no address " + host + "; leave --host out to listen on all."
                        : "Port " + port + " is taken by another program; choose another with --port.", cause);
            }
        }
        return new StartFailure("The board cannot listen on " + host + ":" + port + ": " + cause.getMessage() + ".",
                cause);
    }
}
