package benchpace.web.entrance;

import java.time.Duration;
import org.eclipse.jetty.server.Request;

/**
 * What callers may take at the entrance. The numbers are common practice for a board on a shop's network, no source:
 * twelve phones behind one router open six connections each, and a bad wireless link still carries 20 kB a second.
 *
 * @param largestBody bytes that a request may bring beside its header; more is refused and passed over
 * @param toAsk       how long a connection may take to bring a whole request header, from its opening or from its last
 *                    answer; so it also ends connections that are kept open for nothing
 * @param toSend      how long the body may take after the header, 64 KiB at 5 kB a second; the rest of one refused, too
 * @param answers     what an answer may take
 * @param connections how many there may be
 * @param lanes       threads for paired devices, and for strangers
 */
public record EntranceLimits(int largestBody, Duration toAsk, Duration toSend, Answers answers,
                             Connections connections, Lanes lanes) {

    /** Bytes that a paired device may bring where plans are taken: twice the largest plan there can be. */
    public static final int LARGEST_PLAN = 512 * 1024;

    /** Bytes that a request to an address may bring. */
    int largestBody(Request request, boolean paired) {
        return paired && takesPlans(request) ? Math.max(largestBody, LARGEST_PLAN) : largestBody;
    }

    /** Whether plans are sent there to be kept. A class takes one that is kept, or one of a body's usual length. */
    public static boolean takesPlans(Request request) {
        String path = request.getHttpURI() == null || request.getHttpURI().getCanonicalPath() == null ? ""
                : request.getHttpURI().getCanonicalPath();
        return path.equals("/api/plans") || path.startsWith("/api/plans/");
    }

    /**
     * What an answer may take on its way to a reader.
     *
     * @param largestHeld    bytes that are taken off the thread that made them, more than any page and most records of
     *                       a class; what is longer is sent by that thread, which only a paired device can ask for
     * @param mostHeld       bytes of all such together; beyond, an answer's own thread sends it, as if it were longer
     * @param toRead         how long it may take to be read, ...
     * @param bytesPerSecond ... beside a second for so many bytes
     */
    public record Answers(int largestHeld, int mostHeld, Duration toRead, int bytesPerSecond) {
        long millis(int bytes) {
            return toRead.toMillis() + 1000L * bytes / bytesPerSecond;
        }
    }

    /**
     * How many connections there may be.
     *
     * @param strangers    of devices that nobody has paired, beside live ones: screens have places of their own
     * @param ofOneAddress of those, from one address
     * @param most         in all; each takes a file descriptor
     */
    public record Connections(int strangers, int ofOneAddress, int most) {
        public Connections {
            if (ofOneAddress < 1 || strangers < ofOneAddress || most <= strangers) {
                throw new IllegalArgumentException("one address's strangers are some of all, and they of most");
            }
        }
    }

    /**
     * Threads that run what was asked, once it is there whole; nothing on a network can hold one.
     *
     * @param paired       for paired devices: more than take part in a class, as several wait for the disk at once
     * @param ofOneDevice  of those, for one device at once
     * @param strangers    for the others: as many as let a page be drawn while a PIN is being written down
     * @param ofOneAddress of those, for one address at once
     * @param waiting      requests that may wait for a thread in either lane; beyond, 503 at once
     */
    public record Lanes(int paired, int ofOneDevice, int strangers, int ofOneAddress, int waiting) { }

    public static final EntranceLimits USUAL = new EntranceLimits(64 * 1024, Duration.ofSeconds(20),
            Duration.ofSeconds(13), new Answers(1024 * 1024, 16 * 1024 * 1024, Duration.ofSeconds(30), 1000),
            new Connections(240, 80, 600), new Lanes(16, 4, 4, 3, 500));
}
