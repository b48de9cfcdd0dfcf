package benchpace.web;

import java.net.BindException;
import java.net.SocketException;
import java.nio.channels.UnresolvedAddressException;

/** The board cannot be opened; the message is one plain sentence for whoever starts it. */
public final class StartFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private StartFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    static StartFailure of(String host, int port, Throwable cause) {
        Throwable root = cause;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        String text = String.valueOf(root.getMessage());
        if (root instanceof UnresolvedAddressException || text.contains("assign requested")) {
            return new StartFailure("This machine has no address " + host + "; leave --host out to listen on all.",
                    cause);
        }
        if (root instanceof BindException && text.contains("in use")) {
            return new StartFailure("Port " + port + " is taken by another program; choose another with --port.",
                    cause);
        }
        if (root instanceof SocketException && text.contains("denied")) {
            return new StartFailure("Port " + port + " is kept for the system; choose one above 1023 with --port.",
                    cause);
        }
        return new StartFailure("The board cannot listen on " + host + ":" + port + " (" + text + ").", cause);
    }
}
