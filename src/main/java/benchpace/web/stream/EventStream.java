package benchpace.web.stream;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Writes server-sent events (HTML Living Standard, section 9.2). Text is split at every CR, LF and CRLF, so no guest's
 * name can forge an event.
 */
final class EventStream {
    static final String MEDIA_TYPE = "text/event-stream";
    private final OutputStream out;

    EventStream(OutputStream out) {
        this.out = out;
    }

    /** One event. @param name and {@code id} must hold no line break */
    static String event(String name, String id, String data) {
        StringBuilder text = new StringBuilder("event: ").append(singleLine(name)).append('\n');
        if (!id.isEmpty()) {
            text.append("id: ").append(singleLine(id)).append('\n');
        }
        int from = 0;
        for (int end = lineEnd(data, 0); end < data.length(); end = lineEnd(data, from)) {
            text.append("data: ").append(data, from, end).append('\n');
            from = end + (data.startsWith("\r\n", end) ? 2 : 1);
        }
        return text.append("data: ").append(data, from, data.length()).append("\n\n").toString();
    }

    private static int lineEnd(String data, int from) {
        int end = from;
        while (end < data.length() && data.charAt(end) != '\n' && data.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    private static String singleLine(String text) {
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0 || text.indexOf('\0') >= 0) {
            throw new IllegalArgumentException("an event's name and id are one line");
        }
        return text;
    }

    /** Sends events at once; blocks while the reader does not read, until the connection's own time-out. */
    void send(ByteArrayOutputStream events) throws IOException {
        events.writeTo(out);
        out.flush();
    }

    /** No more is sent; what was packed is ended as such, where somebody still reads. */
    void end() {
        try {
            out.close();
        } catch (IOException e) {
            // nobody reads any more
        }
    }

    void send(String event) throws IOException {
        out.write(event.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
