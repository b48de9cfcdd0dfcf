package benchpace.web.entrance;

import java.net.InetSocketAddress;
import java.util.Optional;
import org.eclipse.jetty.io.EndPoint;

/** One connection, and what is known of whoever is at its other end. Guarded by its {@link Lines}. */
final class Line {
    enum Doing {
        /** No whole request header has come since the connection was opened or last answered. */
        WAITING,
        /** A request is on its way in, is worked on, or its answer is being read. */
        ASKING,
        /** A live screen, which ends by its own rules. */
        LISTENING
    }

    final EndPoint end;
    final String address;
    private Doing doing = Doing.WAITING;
    private long sinceNanos;
    private Optional<String> device = Optional.empty();

    Line(EndPoint end, long nowNanos) {
        this.end = end;
        this.address = end.getRemoteSocketAddress() instanceof InetSocketAddress remote && remote.getAddress() != null
                ? remote.getAddress().getHostAddress() : "";
        this.sinceNanos = nowNanos;
    }

    void does(Doing what, long nowNanos) {
        doing = what;
        sinceNanos = nowNanos;
    }

    /** Which paired device the last request came from, if any: one that was signed out is a stranger again. */
    void comesFrom(Optional<String> device) {
        this.device = device;
    }

    Optional<String> device() {
        return device;
    }

    Doing doing() {
        return doing;
    }

    long sinceNanos() {
        return sinceNanos;
    }

    /** Counts among the strangers' connections. */
    boolean isStranger() {
        return device.isEmpty() && doing != Doing.LISTENING;
    }
}
