package benchpace.bench.tap;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** One connection that stays open, as a browser's does, and asks one thing after the other. Adds next to nothing. */
final class TapLine implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 60_000;
    private static final String LENGTH = "content-length:";

    private final Socket socket = new Socket();
    private final InputStream in;
    private final OutputStream out;
    private final String token;

    /** @param sentNanos just before the request was written @param answeredNanos once its answer was read whole */
    record Answered(int status, String body, long sentNanos, long answeredNanos) {
        /** @throws IllegalStateException if it was refused */
        JsonNode json() throws IOException {
            if (status / 100 != 2) {
                throw new IllegalStateException(status + " " + body);
            }
            return Json.read(body);
        }
    }

    /** @param token of a paired device; may be empty */
    TapLine(int port, String token) throws IOException {
        this.token = token;
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(PATIENCE_MILLIS);
        socket.connect(new InetSocketAddress("127.0.0.1", port));
        in = new BufferedInputStream(socket.getInputStream(), 64 * 1024);
        out = socket.getOutputStream();
    }

    Answered post(String path, String body) throws IOException {
        return ask("POST", path, body.getBytes(StandardCharsets.UTF_8));
    }

    Answered get(String path) throws IOException {
        return ask("GET", path, new byte[0]);
    }

    private Answered ask(String method, String path, byte[] body) throws IOException {
        byte[] head = (method + " " + path + " HTTP/1.1\r\nHost: localhost\r\n"
                + (token.isEmpty() ? "" : "Authorization: Bearer " + token + "\r\n")
                + "Content-Type: application/json\r\nContent-Length: " + body.length + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
        byte[] request = new byte[head.length + body.length];
        System.arraycopy(head, 0, request, 0, head.length);
        System.arraycopy(body, 0, request, head.length, body.length);
        long sent = System.nanoTime();
        out.write(request);
        return answer(sent);
    }

    private Answered answer(long sent) throws IOException {
        int status = Integer.parseInt(line().split(" ")[1]);
        int length = 0;
        for (String field = line(); !field.isEmpty(); field = line()) {
            if (field.toLowerCase(Locale.ROOT).startsWith(LENGTH)) {
                length = Integer.parseInt(field.substring(LENGTH.length()).strip());
            }
        }
        byte[] body = new byte[length];
        new DataInputStream(in).readFully(body);
        return new Answered(status, new String(body, StandardCharsets.UTF_8), sent, System.nanoTime());
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int b = in.read(); b != '\n'; b = in.read()) {
            if (b < 0) {
                throw new IOException("the connection has ended");
            }
            if (b != '\r') {
                line.append((char) b);
            }
        }
        return line.toString();
    }

    @Override public void close() throws IOException {
        socket.close();
    }
}
