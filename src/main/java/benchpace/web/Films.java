package benchpace.web;

import benchpace.web.request.Reads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The silent films that keep screens on. Some players ask for a film in parts and play none from a server that sends
 * only the whole, so these are sent in parts (RFC 9110, 14), as the other files are not.
 */
final class Films {
    private static final Map<String, String> TYPES = Map.of(
            "/static/img/awake.mp4", "video/mp4",
            "/static/img/awake.webm", "video/webm");
    private static final Pattern PART = Pattern.compile("bytes=(\\d{1,9})-(\\d{0,9})");

    private Films() { }

    static void routes(RoutesConfig routes) {
        TYPES.forEach((address, type) -> {
            byte[] film = read(address);
            Reads.route(routes, address, ctx -> send(ctx, film, type));
        });
    }

    /** A wish for anything but one part that there is may be passed over for the whole (RFC 9110, 14.2). */
    private static void send(Context ctx, byte[] film, String type) {
        ctx.contentType(type).header("Accept-Ranges", "bytes").header("Cache-Control", "no-cache");
        Matcher part = PART.matcher(Objects.requireNonNullElse(ctx.header("Range"), ""));
        int from = part.matches() ? Integer.parseInt(part.group(1)) : 0;
        int last = part.matches() && !part.group(2).isEmpty()
                ? Math.min(Integer.parseInt(part.group(2)), film.length - 1) : film.length - 1;
        if (!part.matches() || from > last) {
            ctx.result(film);
            return;
        }
        ctx.status(206).header("Content-Range", "bytes " + from + "-" + last + "/" + film.length)
                .result(Arrays.copyOfRange(film, from, last + 1));
    }

    private static byte[] read(String resource) {
        try (InputStream in = Films.class.getResourceAsStream(resource)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
