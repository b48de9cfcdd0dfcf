package benchpace.bench.tap;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Listens to an event stream for its {@code state} events alone, at the price of little more than looking at each byte
 * once: HTTP's header is passed over, its chunks (RFC 9112, section 7.1) are put together again, lines are kept only as
 * far as their beginning could be of a state. Whatever is cut where, it hears the same.
 */
final class StateLines {
    /** Of a line, as far as it is kept. */
    private static final int LONGEST = 512;
    private static final int LONGEST_HEADER = 16 * 1024;
    private static final Pattern SEQ = Pattern.compile("\"seq\":(\\d+)");
    private static final Pattern HEADER = Pattern.compile("(?is)HTTP/1\\.1 200 .*transfer-encoding: chunked.*");

    /** Which of what a tap changes has come. */
    enum Breath { FIRST, WHOLE, BOTH }

    /** Told of each state. */
    interface Heard {
        /** @param bytes of events since the state before, this one with them */
        void state(long seq, Breath breath, long bytes);
    }

    private enum Part { HEADER, SIZE, CHUNK, CHUNK_END }

    private final Heard heard;
    private final byte[] line = new byte[LONGEST_HEADER];
    private Part part = Part.HEADER;
    private int length;
    private int left;
    private boolean inState;
    private long bytes;

    StateLines(Heard heard) {
        this.heard = heard;
    }

    /** @throws IllegalStateException if it is no event stream */
    void read(byte[] read, int until) {
        int at = 0;
        while (at < until) {
            if (part == Part.CHUNK) {
                int end = Math.min(until, at + left);
                content(read, at, end);
                left -= end - at;
                at = end;
                if (left == 0) {
                    part = Part.CHUNK_END;
                }
            } else {
                framing(read[at++]);
            }
        }
    }

    /** Header, sizes of chunks, and the ends of lines after them; a line of content may go on in the next chunk. */
    private void framing(byte b) {
        if (part == Part.HEADER) {
            header(b);
        } else if (part == Part.CHUNK_END) {
            part = b == '\n' ? Part.SIZE : part;
        } else if (b == '\n') {
            part = left == 0 ? Part.CHUNK_END : Part.CHUNK;
        } else if (b != '\r') {
            left = left * 16 + Character.digit(b, 16);
        }
    }

    private void header(byte b) {
        if (length == LONGEST_HEADER) {
            throw new IllegalStateException("the header is too long");
        }
        line[length++] = b;
        if (b == '\n' && length >= 4 && line[length - 3] == '\n') {
            String header = new String(line, 0, length, StandardCharsets.ISO_8859_1);
            length = 0;
            if (!HEADER.matcher(header).matches()) {
                throw new IllegalStateException("no event stream in chunks: " + header);
            }
            part = Part.SIZE;
        }
    }

    private void content(byte[] read, int from, int until) {
        int counted = from;
        for (int at = from; at < until; at++) {
            byte b = read[at];
            if (b == '\n') {
                bytes += at + 1 - counted;
                counted = at + 1;
                endOfLine();
            } else if (length < LONGEST) {
                line[length++] = b;
            }
        }
        bytes += until - counted;
    }

    private void endOfLine() {
        if (length == 0) {
            inState = false;
        } else if (line[0] == 'e' && startsWith("event: ")) {
            inState = startsWith("event: state") && length == "event: state".length();
        } else if (inState && startsWith("data: ")) {
            state(new String(line, 0, length, StandardCharsets.ISO_8859_1));
        }
        length = 0;
    }

    private void state(String text) {
        Matcher seq = SEQ.matcher(text);
        if (!seq.find()) {
            throw new IllegalStateException("a state without its number: " + text);
        }
        Breath breath = text.contains("\"whole\":false") ? Breath.FIRST
                : text.contains("\"whole\":true") ? Breath.WHOLE : Breath.BOTH;
        heard.state(Long.parseLong(seq.group(1)), breath, bytes + 1); // and the empty line after it
        bytes = -1;
    }

    private boolean startsWith(String text) {
        if (length < text.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (line[i] != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }
}
