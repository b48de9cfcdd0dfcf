package benchpace.web;

import benchpace.web.request.Accepted;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * Sends texts packed to whoever says that he can unpack them (gzip, RFC 9110, 8.4.1.3); the events of live screens are
 * no answer of this kind. No other site can make a browser ask for a page as a paired device (the session is {@code
 * SameSite=Strict}), so the length of a page tells no stranger of what stands in it.
 */
final class Packed {
    private static final Pattern TEXT = Pattern.compile(
            "(text/(html|css|plain|csv|calendar|javascript)|application/(json|problem\\+json)).*");
    /** What is shorter goes in one packet anyway. */
    private static final int WORTH_IT = 1000;

    private Packed() { }

    /** Runs after every request: packs what the route has answered with. */
    static void answer(Context ctx) {
        InputStream content = ctx.resultInputStream();
        String type = Objects.requireNonNullElse(ctx.res().getContentType(), "");
        String tag = Objects.requireNonNullElse(ctx.res().getHeader("ETag"), "W/");
        if (content == null || ctx.res().getHeader("Content-Encoding") != null || ctx.status().getCode() == 206
                || !TEXT.matcher(type).matches() || !tag.startsWith("W/")) { // a strong tag is of these very bytes
            return;
        }
        byte[] whole = read(content);
        if (whole.length < WORTH_IT) {
            ctx.result(whole);
        } else {
            send(ctx, whole, () -> packed(whole, Deflater.DEFAULT_COMPRESSION));
        }
    }

    /** One of both, whichever the one who asks can read. */
    static void send(Context ctx, byte[] whole, Supplier<byte[]> packed) {
        ctx.res().addHeader("Vary", "Accept-Encoding");
        if (Accepted.gzip(ctx)) {
            ctx.header("Content-Encoding", "gzip").result(packed.get());
        } else {
            ctx.result(whole);
        }
    }

    /** As short as it can be made, for what is packed once. */
    static byte[] tightly(byte[] whole) {
        return packed(whole, Deflater.BEST_COMPRESSION);
    }

    private static byte[] packed(byte[] whole, int level) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(whole.length / 3);
        try (GZIPOutputStream gzip = new GZIPOutputStream(bytes) {
            {
                def.setLevel(level);
            }
        }) {
            gzip.write(whole);
        } catch (IOException e) {
            throw new UncheckedIOException("memory does not fail to be written to", e);
        }
        return bytes.toByteArray();
    }

    private static byte[] read(InputStream content) {
        try (content) {
            return content.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
