package benchpace.web;

import benchpace.web.request.Reads;
import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Set;

/** The two scripts that come as webjars, under addresses without version numbers. */
final class Webjars {
    private static final String ROOT = "/META-INF/resources/webjars/";
    private static final Map<String, String> SCRIPTS = Map.of(
            "/webjars/htmx.js", "htmx.org/2.0.10/dist/htmx.min.js",
            "/webjars/htmx-sse.js", "htmx-ext-sse/2.2.2/sse.js");

    private Webjars() { }

    static Set<String> addresses() {
        return SCRIPTS.keySet();
    }

    static void routes(RoutesConfig routes) {
        SCRIPTS.forEach((address, resource) -> {
            byte[] script = read(ROOT + resource);
            Reads.route(routes, address, ctx -> ctx.contentType("text/javascript; charset=utf-8")
                    .header("Cache-Control", "max-age=86400").result(script));
        });
    }

    private static byte[] read(String resource) {
        try (InputStream in = Webjars.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the class path lacks " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
