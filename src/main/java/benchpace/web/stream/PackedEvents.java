package benchpace.web.stream;

import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.GZIPOutputStream;

/** Events packed on their way, each flush as far as it goes (gzip, RFC 9110, 8.4.1.3). */
final class PackedEvents extends GZIPOutputStream {
    private static final int AT_ONCE = 1024;

    PackedEvents(OutputStream plain) throws IOException {
        super(plain, AT_ONCE, true);
    }

    /** Writes the end, and gives back the quarter of a megabyte that it held outside of the heap. */
    @Override public void close() throws IOException {
        try {
            super.close();
        } finally {
            def.end();
        }
    }
}
