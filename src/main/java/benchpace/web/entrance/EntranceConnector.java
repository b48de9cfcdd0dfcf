package benchpace.web.entrance;

import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/** Listens, and tells the {@link Lines} who comes and goes. */
public final class EntranceConnector extends ServerConnector {
    private static final long LOOKS_EVERY_MILLIS = 1000;
    /** One thread accepts and one watches all connections, as neither ever waits for one of them. */
    private static final int ACCEPTING = 1;
    private static final int WATCHING = 1;

    private final Lines lines;

    public EntranceConnector(Server server, Lines lines, ConnectionFactory... protocols) {
        super(server, ACCEPTING, WATCHING, protocols);
        this.lines = lines;
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
