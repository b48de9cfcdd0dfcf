package benchpace.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * A text in UTF-8 of a size that is looked at first, so that nothing that is no such file, or never ends, takes all the
 * memory. The largest plan there can be has a third of its limit, the log of a whole day's class a tenth.
 */
public final class SizedText {
    /** A plan, in bytes. */
    public static final int PLAN = 1 << 20;
    /** Some ten thousand cooling cases. */
    public static final int CASES = 4 << 20;
    /** The log of one class. */
    public static final int LOG = 8 << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SizedText() { }

    /** There is more than is read; the message goes on from the file's name. */
    public static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        TooLarge(int most) {
            super("is larger than " + (most >> 20) + " MiB, the most that is read");
        }
    }

    /**
     * Reads it all; a byte order mark, which some editors write, is passed over.
     *
     * @param most in bytes; no more is ever held
     * @throws TooLarge if there is more
     * @throws java.nio.charset.CharacterCodingException if it is no text in UTF-8
     */
    public static String read(InputStream in, int most) throws IOException {
        byte[] bytes = in.readNBytes(most + 1);
        if (bytes.length > most) {
            throw new TooLarge(most);
        }
        String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    /**
     * The same of text that somebody else turns into characters.
     *
     * @param most in characters; no more is ever held
     * @throws TooLarge if there is more
     */
    public static String read(Reader in, int most) throws IOException {
        StringBuilder text = new StringBuilder();
        char[] part = new char[8192];
        for (int count = in.read(part); count >= 0; count = in.read(part)) {
            if (count > most - text.length()) {
                throw new TooLarge(most);
            }
            text.append(part, 0, count);
        }
        return text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text.toString();
    }
}
