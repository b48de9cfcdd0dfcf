package benchpace.web.entrance;

import benchpace.web.TestBoard;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Says to the board, byte for byte, what no proper client would say (RFC 9112 message form). */
public final class RawExchange {
    private RawExchange() { }

    /** Sends a request text whose lines end in LF here and CRLF on the wire, and reads until the board closes. */
    public static String of(TestBoard board, String request) throws IOException {
        return bytes(board, request.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The same from another address of this machine, such as 127.0.0.7, as if another device asked. */
    public static String from(String address, TestBoard board, String request) throws IOException {
        return bytes(address, board.port(), request.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    static String bytes(TestBoard board, byte[] request) throws IOException {
        return bytes("127.0.0.1", board.port(), request);
    }

    static String bytes(int port, byte[] request) throws IOException {
        return bytes("127.0.0.1", port, request);
    }

    private static String bytes(String address, int port, byte[] request) throws IOException {
        try (Socket socket = new Socket()) {
            socket.bind(new InetSocketAddress(address, 0));
            socket.connect(new InetSocketAddress("127.0.0.1", port), 5_000);
            socket.setSoTimeout(30_000);
            try {
                socket.getOutputStream().write(request);
                socket.getOutputStream().flush();
            } catch (java.net.SocketException closed) {
                // the board has heard enough; what it says of it counts
            }
            InputStream in = socket.getInputStream();
            ByteArrayOutputStream answer = new ByteArrayOutputStream();
            byte[] buffer = new byte[8192];
            try {
                for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                    answer.write(buffer, 0, n);
                }
            } catch (java.net.SocketException reset) {
                // the board may close while bytes are still on the way to it; what it said before counts
            }
            return answer.toString(StandardCharsets.UTF_8);
        }
    }

    public static int status(String answer) {
        return answer.startsWith("HTTP/1.1 ") ? Integer.parseInt(answer.substring(9, 12)) : 0;
    }

    /** The message after its header section. */
    public static String body(String answer) {
        return answer.substring(answer.indexOf("\r\n\r\n") + 4);
    }
}
