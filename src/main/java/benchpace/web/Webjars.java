package benchpace.web;

import benchpace.web.request.Reads;
import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
            byte[] script = WithoutComments.ofScript(new String(read(ROOT + resource), StandardCharsets.UTF_8))
                    .getBytes(StandardCharsets.UTF_8);
            byte[] packed = Packed.tightly(script);
            Reads.route(routes, address, ctx -> Packed.send(ctx.contentType("text/javascript; charset=utf-8")
                    .header("Cache-Control", "max-age=86400"), script, () -> packed));
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
