package benchpace.web.stream;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Reads an event stream as a browser does, rule by rule from the HTML Living Standard, section 9.2.6, "Interpreting an
 * event stream". Written apart from the board's own writer, to judge it.
 */
public final class EventReader {
    private final PushbackReader in;
    private String lastId = "";
    private boolean begun;
    private int comments;

    /** @param id the last event id in force when it was dispatched */
    public record Event(String type, String id, String data) { }

    EventReader(InputStream in) {
        this.in = new PushbackReader(new InputStreamReader(in, StandardCharsets.UTF_8), 1);
    }

    /** How many comment lines were passed so far. */
    int comments() {
        return comments;
    }

    /** The next event; empty at the end of the stream, where an event without its blank line is discarded. */
    Optional<Event> next() throws IOException {
        StringBuilder data = new StringBuilder();
        String type = "";
        for (Optional<String> line = line(); line.isPresent(); line = line()) {
            String text = line.get();
            if (text.isEmpty()) {
                if (data.length() == 0) {
                    type = "";
                    continue;
                }
                data.setLength(data.length() - 1);
                return Optional.of(new Event(type.isEmpty() ? "message" : type, lastId, data.toString()));
            }
            int colon = text.indexOf(':');
            if (colon == 0) {
                comments++;
                continue;
            }
            String field = colon < 0 ? text : text.substring(0, colon);
            String value = colon < 0 ? "" : text.substring(colon + 1);
            value = value.startsWith(" ") ? value.substring(1) : value;
            switch (field) {
                case "event" -> type = value;
                case "data" -> data.append(value).append('\n');
                case "id" -> lastId = value.indexOf('\0') < 0 ? value : lastId;
                default -> { }
            }
        }
        return Optional.empty();
    }

    /** Up to CR, LF or CRLF; empty at the end, where an unfinished line counts for nothing. */
    private Optional<String> line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = in.read(); c >= 0; c = in.read()) {
            if (!begun) {
                begun = true;
                if (c == '\uFEFF') {
                    continue;
                }
            }
            if (c == '\n') {
                return Optional.of(line.toString());
            }
            if (c == '\r') {
                int after = in.read();
                if (after >= 0 && after != '\n') {
                    in.unread(after);
                }
                return Optional.of(line.toString());
            }
            line.append((char) c);
        }
        return Optional.empty();
    }
}
