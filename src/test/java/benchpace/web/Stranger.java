package benchpace.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** A connection of a device that nobody has paired, from an address of its own choice, which says what it likes. */
public final class Stranger implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 30_000;

    /** Another address of this machine, which the board takes for another's: 127.0.0.2 and so on. */
    public static String at(int number) {
        return "127.0.0." + (1 + number);
    }

    private static final ScheduledExecutorService DRIPPING = Executors.newScheduledThreadPool(1, work -> {
        Thread thread = new Thread(work, "dripping");
        thread.setDaemon(true);
        return thread;
    });

    private final Socket socket = new Socket();
    private volatile ScheduledFuture<?> drip;

    public Stranger(TestBoard board, String from) throws IOException {
        socket.setReceiveBufferSize(4096);
        socket.bind(new InetSocketAddress(from, 0));
        socket.connect(new InetSocketAddress("127.0.0.1", board.port()), 5_000);
        socket.setSoTimeout(PATIENCE_MILLIS);
    }

    /** @param text whose lines end in LF here and in CRLF on the wire */
    public Stranger says(String text) throws IOException {
        socket.getOutputStream().write(text.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        return this;
    }

    /** Goes on and on sending a byte at a time, until the board hangs up. */
    public Stranger drips(char what, long everyMillis) {
        drip = DRIPPING.scheduleAtFixedRate(() -> {
            try {
                socket.getOutputStream().write(what);
            } catch (IOException hungUp) {
                drip.cancel(false);
            }
        }, everyMillis, everyMillis, TimeUnit.MILLISECONDS);
        return this;
    }

    /** Whether what it still drips reaches nobody any more. */
    public boolean isCutOff() {
        return drip.isCancelled();
    }

    /** Reads until the board closes in order. @throws IOException if it cuts the connection off instead */
    public String hearsToTheEnd() throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** Reads until the board hangs up. */
    public String hears() throws IOException {
        ByteArrayOutputStream answer = new ByteArrayOutputStream();
        byte[] buffer = new byte[8192];
        try {
            for (int n = socket.getInputStream().read(buffer); n >= 0; n = socket.getInputStream().read(buffer)) {
                answer.write(buffer, 0, n);
            }
        } catch (java.net.SocketException reset) {
            // hung up on while still talking; what was said before counts
        }
        return answer.toString(StandardCharsets.UTF_8);
    }

    /** Reads no further than this. */
    public String hearsUntil(String end) throws IOException {
        StringBuilder heard = new StringBuilder();
        for (int c = socket.getInputStream().read(); c >= 0; c = socket.getInputStream().read()) {
            heard.append((char) c);
            if (heard.indexOf(end) >= 0) {
                break;
            }
        }
        return heard.toString();
    }

    /** Whether the board has hung up, once all that it said before is read. */
    public boolean isHungUpOn() {
        try {
            socket.setSoTimeout(1);
            boolean over = socket.getInputStream().read(new byte[65_536]) < 0;
            socket.setSoTimeout(PATIENCE_MILLIS);
            return over;
        } catch (java.net.SocketTimeoutException open) {
            return stillOpen();
        } catch (IOException reset) {
            return true;
        }
    }

    private boolean stillOpen() {
        try {
            socket.setSoTimeout(PATIENCE_MILLIS);
            return false;
        } catch (IOException closed) {
            return true;
        }
    }

    @Override public void close() throws IOException {
        if (drip != null) {
            drip.cancel(false);
        }
        socket.close();
    }
}
