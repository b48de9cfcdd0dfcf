package benchpace.web.screen;

import com.microsoft.playwright.Route;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Answers a browser in the board's place with rendered pages and the real styles and scripts; no stream speaks. */
public final class OfflineScreens {
    public static final String HOST = "http://127.0.0.1:1";
    private static final Map<String, String> WEBJARS = Map.of(
            "/webjars/htmx.js", "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js",
            "/webjars/htmx-sse.js", "/META-INF/resources/webjars/htmx-ext-sse/2.2.2/sse.js");
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; connect-src 'self'; font-src 'self'; form-action 'self'; "
            + "base-uri 'none'; frame-ancestors 'none'";

    private final Map<String, String> pages = new LinkedHashMap<>();
    private final Map<String, String> sheets = new LinkedHashMap<>();

    public void page(String path, String html) {
        pages.put(path, html);
    }

    public void sheet(String path, String html) {
        sheets.put(path, html);
    }

    public void answer(Route route) {
        String path = route.request().url().substring(HOST.length()).replaceAll("[?#].*", "");
        if (pages.containsKey(path)) {
            route.fulfill(new Route.FulfillOptions().setContentType("text/html; charset=utf-8").setBody(pages.get(path))
                    .setHeaders(Map.of("Content-Security-Policy", POLICY, "Content-Type", "text/html; charset=utf-8")));
        } else if (sheets.containsKey(path)) {
            answer(route, "text/html; charset=utf-8", sheets.get(path).getBytes(StandardCharsets.UTF_8));
        } else if (WEBJARS.containsKey(path)) {
            answer(route, "text/javascript", resource(WEBJARS.get(path)));
        } else if (path.startsWith("/static/")) {
            String type = path.endsWith(".css") ? "text/css"
                    : path.endsWith(".svg") ? "image/svg+xml" : "text/javascript";
            answer(route, type, file(path));
        } else if (path.equals("/studio.css")) {
            answer(route, "text/css", new byte[0]);
        } else if (!path.endsWith("/stream")) {
            route.abort();
        } // a stream is left open without a word
    }

    private static void answer(Route route, String type, byte[] body) {
        route.fulfill(new Route.FulfillOptions().setContentType(type).setBodyBytes(body));
    }

    private static byte[] resource(String path) {
        try (var in = OfflineScreens.class.getResourceAsStream(path)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Several style sheets come as one. */
    private static byte[] file(String path) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try {
            for (String each : path.split("\\+")) {
                String name = each.startsWith("/") ? each : "/static/css/" + each;
                all.writeBytes(Files.readAllBytes(Path.of((name + (name.contains(".") ? "" : ".css")).substring(1))));
            }
            return all.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
