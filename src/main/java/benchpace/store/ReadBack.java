package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;

/** Accepted means readable: what is to be kept is read back first, by the reader of the next start. */
final class ReadBack {
    private ReadBack() { }

    /** Reads what was written. */
    interface Reader {
        Object read() throws JsonProcessingException;
    }

    /** @throws CannotBeKept if it is not read back equal */
    static void require(Object meant, Reader reader) {
        Object read;
        try {
            read = reader.read();
        } catch (BadField e) {
            throw new CannotBeKept("It cannot be kept: " + e.getMessage() + ".", e);
        } catch (JsonProcessingException e) {
            throw new CannotBeKept("It cannot be kept: it " + Json.problem(e).sentence() + ".", e);
        } catch (IllegalArgumentException e) {
            throw new CannotBeKept("It cannot be kept: " + e.getMessage() + ".", e);
        }
        if (!read.equals(meant)) {
            throw new CannotBeKept("It cannot be kept: it would be read back as something else.", null);
        }
    }

    /** The text as it comes back from a file in UTF-8: an unpaired surrogate does not. */
    static String utf8(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }
}
