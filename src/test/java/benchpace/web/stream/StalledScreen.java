package benchpace.web.stream;

import benchpace.web.TestBoard;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A screen that asks for its stream and then reads nothing, as a phone asleep in a pocket does. */
final class StalledScreen implements AutoCloseable {
    private final Socket socket = new Socket();

    StalledScreen(TestBoard board, String path, String token) throws IOException {
        socket.setReceiveBufferSize(4096);
        socket.connect(new InetSocketAddress("127.0.0.1", board.port()), 5_000);
        socket.getOutputStream().write(("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer " + token
                + "\r\nAccept: text/event-stream\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    }

    /** Wakes up and reads all that is still there. @return how many states came before the board had hung up */
    long readToTheEnd() throws IOException {
        socket.setSoTimeout(20_000);
        InputStream in = socket.getInputStream();
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] buffer = new byte[65_536];
        try {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                all.write(buffer, 0, n);
            }
        } catch (java.net.SocketException reset) {
            // what came before counts
        }
        return all.toString(StandardCharsets.UTF_8).lines().filter("event: state"::equals).count();
    }

    @Override public void close() throws IOException {
        socket.close();
    }
}
