package benchpace.web;

import java.io.IOException;
import java.net.InetAddress;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.jmdns.JmDNS;
import javax.jmdns.ServiceInfo;
import javax.jmdns.impl.DNSStatefulObject;

/**
 * The board's name on the local network, by multicast DNS (RFC 6762): {@code benchpace.local}, or the next free one if
 * another board has that. A convenience and nothing else: it takes its time on a thread of its own, and where a network
 * has no multicast, or there is no network, the board has no name and nobody is told.
 */
public final class LocalName implements AutoCloseable {
    private static final String WANTED = "benchpace";
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    /** Long enough for the first farewell to leave; the others on the network forget the name after a while anyway. */
    private static final Duration FAREWELL = Duration.ofMillis(400);

    /** How a name is made known. */
    @FunctionalInterface
    interface Announcer {
        /**
         * Returns once the name is known to be free and is announced.
         *
         * @throws IOException if this network knows no such names
         */
        Announced announce(InetAddress at, String wanted, int port) throws IOException, InterruptedException;
    }

    /** A name that is announced. */
    interface Announced {
        /** As it is now: it may have had to give way to another's. Ends in {@code .local}. */
        String name();

        void farewell() throws IOException;
    }

    private final Announcer announcer;
    private volatile Optional<Announced> announced = Optional.empty();
    private volatile boolean closed;

    public LocalName() {
        this(LocalName::multicast);
    }

    LocalName(Announcer announcer) {
        this.announcer = announcer;
    }

    /** Begins to announce, and returns at once. @param told hears the name if it is announced */
    public void announce(InetAddress at, int port, Consumer<String> told) {
        daemon("name", () -> {
            try {
                Announced made = announcer.announce(at, WANTED, port);
                announced = Optional.of(made);
                if (closed) {
                    made.farewell();
                } else {
                    told.accept(made.name());
                }
            } catch (IOException | InterruptedException | RuntimeException | LinkageError e) {
                // the board is reached by its address
            }
        });
    }

    /** The name under which the network reaches the board, lower case; empty if it has none. */
    public Optional<String> name() {
        return closed ? Optional.empty() : announced.map(a -> a.name().toLowerCase(Locale.ROOT));
    }

    @Override public void close() {
        closed = true;
        announced.ifPresent(made -> {
            Thread farewell = daemon("farewell", () -> {
                try {
                    made.farewell();
                } catch (IOException | RuntimeException e) {
                    // it is forgotten in time
                }
            });
            try {
                farewell.join(FAREWELL.toMillis());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
    }

    private static Thread daemon(String name, Runnable work) {
        Thread thread = new Thread(work, "local-" + name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private static Announced multicast(InetAddress at, String wanted, int port) throws IOException {
        JmDNS dns = JmDNS.create(at, wanted);
        try {
            dns.registerService(ServiceInfo.create("_http._tcp.local.", "Benchpace", port, "path=/"));
            if (!((DNSStatefulObject) dns).waitForAnnounced(PATIENCE.toMillis())) {
                throw new IOException("no name was announced");
            }
        } catch (IOException | RuntimeException e) { // its socket and threads are not left behind
            dns.close();
            throw e;
        }
        return new Announced() {
            @Override public String name() {
                return dns.getHostName().replaceFirst("\\.$", "");
            }

            @Override public void farewell() throws IOException {
                dns.close();
            }
        };
    }
}
