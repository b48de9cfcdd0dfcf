package benchpace;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicLong;

/** A screen that follows a class, and remembers when it heard of what; or one that has stopped reading. */
final class LoadScreen implements AutoCloseable {
    private final Socket socket = new Socket();
    private final ConcurrentSkipListMap<Long, Long> heardNanos = new ConcurrentSkipListMap<>();
    private final AtomicLong seq = new AtomicLong();
    private final AtomicLong whole = new AtomicLong();

    private LoadScreen(int port, String path, String token, int receiveBuffer) throws IOException {
        socket.setReceiveBufferSize(receiveBuffer);
        socket.connect(new InetSocketAddress("127.0.0.1", port));
        socket.getOutputStream().write(("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer " + token
                + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    }

    static LoadScreen reading(int port, String path, String token) throws IOException {
        LoadScreen screen = new LoadScreen(port, path, token, 65_536);
        Thread reader = new Thread(screen::read, "screen");
        reader.setDaemon(true);
        reader.start();
        return screen;
    }

    static LoadScreen stalled(int port, String path, String token) throws IOException {
        return new LoadScreen(port, path, token, 4096);
    }

    private void read() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(socket.getInputStream(),
                StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (line.startsWith("id: ")) {
                    long newest = Long.parseLong(line.substring(4));
                    heardNanos.putIfAbsent(newest, System.nanoTime());
                    seq.accumulateAndGet(newest, Math::max);
                } else if (line.contains("\"whole\":true")) {
                    whole.set(seq.get());
                }
            }
        } catch (IOException closed) {
            // by the test
        }
    }

    /** The newest that it heard of. */
    long seq() {
        return seq.get();
    }

    /** The newest that it has the whole view of. */
    long whole() {
        return whole.get();
    }

    /** When it first knew of that event or a later one. */
    long heardNanos(long event) {
        return heardNanos.ceilingEntry(event).getValue();
    }

    @Override public void close() throws IOException {
        socket.close();
    }
}
