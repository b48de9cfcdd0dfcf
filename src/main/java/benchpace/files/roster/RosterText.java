package benchpace.files.roster;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The text of a roster's file, whatever a spreadsheet wrote it in: UTF-8 or UTF-16 with their byte order mark (Unicode
 * 15.0, section 23.8) or without, else Windows-1252.
 */
public final class RosterText {
    /** Longer than any table's list of guests. */
    public static final int MOST_BYTES = 60 * 1024;
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private RosterText() { }

    /** Empty if it is no text. */
    public static Optional<String> of(byte[] bytes) {
        Optional<Charset> utf16 = utf16(bytes);
        if (utf16.isPresent()) {
            return read(bytes, utf16.get()).map(RosterText::unmarked).filter(text -> text.indexOf(0) < 0);
        }
        for (byte b : bytes) {
            if (b >= 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f') {
                return Optional.empty();
            }
        }
        return read(bytes, StandardCharsets.UTF_8).or(() -> read(bytes, WINDOWS)).map(RosterText::unmarked);
    }

    /** By its mark; without one, text of European letters has a zero in every second place. */
    private static Optional<Charset> utf16(byte[] bytes) {
        if (bytes.length < 2 || bytes.length % 2 != 0) {
            return Optional.empty();
        }
        int odd = 0;
        int even = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                odd += i % 2;
                even += 1 - i % 2;
            }
        }
        boolean little = (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe || even == 0 && 4 * odd > bytes.length;
        boolean big = (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff || odd == 0 && 4 * even > bytes.length;
        return little ? Optional.of(StandardCharsets.UTF_16LE)
                : big ? Optional.of(StandardCharsets.UTF_16BE) : Optional.empty();
    }

    private static Optional<String> read(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static String unmarked(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
