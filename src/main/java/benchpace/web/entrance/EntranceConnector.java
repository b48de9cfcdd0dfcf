package benchpace.web.entrance;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.DetectorConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;

/** Listens, and tells the {@link Lines} who comes and goes. */
public final class EntranceConnector extends ServerConnector {
    private static final long LOOKS_EVERY_MILLIS = 1000;
    /** One thread accepts and one watches all connections, as neither ever waits for one of them. */
    private static final int ACCEPTING = 1;
    private static final int WATCHING = 1;
    /** What waits in the system for a screen that reads nothing: some views, not megabytes of stale ones. */
    private static final int UNREAD_BYTES = 128 * 1024;

    private final Lines lines;

    /** @param keys opens it over TLS, when there are some */
    public EntranceConnector(Server server, Lines lines, HttpConfiguration http, Optional<TlsKeys> keys) {
        super(server, ACCEPTING, WATCHING, protocols(http, keys));
        this.lines = lines;
        setAcceptedSendBufferSize(UNREAD_BYTES);
    }

    private static ConnectionFactory[] protocols(HttpConfiguration http, Optional<TlsKeys> keys) {
        HttpConnectionFactory plain = new HttpConnectionFactory(http);
        if (keys.isEmpty()) {
            return new ConnectionFactory[] {plain};
        }
        // no check of names: a board is reached by whatever address it has this evening, and Guard knows its names
        http.addCustomizer(new SecureRequestCustomizer(false));
        SslConnectionFactory tls = new SslConnectionFactory(keys.get().factory(), plain.getProtocol());
        return new ConnectionFactory[] {new DetectorConnectionFactory(tls), plain};
    }

    @Override protected void doStart() throws Exception {
        super.doStart();
        look();
    }

    private void look() {
        lines.hangUpOnTheSilent();
        if (isRunning() || isStarting()) {
            getScheduler().schedule(this::look, LOOKS_EVERY_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    @Override protected void onEndPointOpened(EndPoint end) {
        super.onEndPointOpened(end);
        lines.opened(end);
    }

    @Override protected void onEndPointClosed(EndPoint end) {
        lines.closed(end);
        super.onEndPointClosed(end);
    }
}
