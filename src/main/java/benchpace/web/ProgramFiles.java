package benchpace.web;

import benchpace.web.request.KnownTag;
import benchpace.web.request.Reads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The program's own scripts, style sheets, typefaces and pictures. Each is read from the program, freed of comments and
 * packed when it is first asked for, and kept so; the style sheets of one page are sent as one, in the order in which
 * their address names them ({@code css/base+drawing+wall.css}). A browser asks for it anew every time and hears in a
 * few bytes that it is still the same, so that no page ever runs with a script of another release.
 */
final class ProgramFiles {
    static final String ADDRESS = "/static/<file>";
    /** A file of the program does nothing by itself, so it may do nothing. */
    private static final String POLICY = "default-src 'none'; frame-ancestors 'none'";
    private static final List<String> OF_PAGES =
            List.of("Referrer-Policy", "Cross-Origin-Opener-Policy", "Cross-Origin-Resource-Policy");
    private static final String WORD = "[a-z0-9]+(?:-[a-z0-9]+)*";
    private static final Pattern NAME = Pattern.compile(WORD + "(?:/" + WORD + ")*(-OFL)?\\.(css|js|svg|woff2|txt)");
    private static final Pattern SHEETS = Pattern.compile("css/(" + WORD + "(?:\\+" + WORD + "){1,19})\\.css");
    /** More sheets than all pages ask for together; whoever makes up others fills no more. */
    private static final int MOST_SHEETS = 60;
    private static final Map<String, String> TYPES = Map.of("css", "text/css",
            "js", "text/javascript", "svg", "image/svg+xml", "woff2", "font/woff2",
            "txt", "text/plain; charset=utf-8");

    /** @param mark changes with the content */
    private record Sent(String type, byte[] whole, byte[] packed, String mark) { }

    private final Map<String, Sent> files = new ConcurrentHashMap<>();
    /** Those asked for last. */
    private final Map<String, Sent> sheets = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override protected boolean removeEldestEntry(Map.Entry<String, Sent> eldest) {
            return size() > MOST_SHEETS;
        }
    });

    void routes(RoutesConfig routes) {
        Reads.route(routes, ADDRESS, this::send);
    }

    private void send(Context ctx) {
        Sent file = find(ctx.pathParam("file")).orElseThrow(NotFoundResponse::new);
        ctx.header("Cache-Control", "no-cache").header("Content-Security-Policy", POLICY).header("ETag", file.mark);
        boolean packed = file.packed.length < file.whole.length;
        for (String ofPages : OF_PAGES) {
            ctx.res().setHeader(ofPages, null);
        }
        if (KnownTag.is(ctx, file.mark)) {
            if (packed) {
                ctx.res().addHeader("Vary", "Accept-Encoding");
            }
            ctx.status(304);
            return;
        }
        ctx.contentType(file.type);
        if (packed) {
            Packed.send(ctx, file.whole, () -> file.packed);
        } else {
            ctx.result(file.whole);
        }
    }

    private Optional<Sent> find(String name) {
        Map<String, Sent> kept = SHEETS.matcher(name).matches() ? sheets : files;
        Optional<Sent> found = Optional.ofNullable(kept.get(name)).or(() -> whole(name).map(all -> sent(name, all)));
        found.ifPresent(file -> kept.put(name, file));
        return found;
    }

    private static Optional<byte[]> whole(String name) {
        Matcher several = SHEETS.matcher(name);
        if (!several.matches()) {
            return NAME.matcher(name).matches() ? read(name) : Optional.empty();
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Set<String> told = new HashSet<>();
        for (String sheet : several.group(1).split("\\+")) {
            Optional<byte[]> one = read("css/" + sheet + ".css");
            if (one.isEmpty() || !told.add(sheet)) {
                return Optional.empty();
            }
            all.writeBytes(one.get());
        }
        return Optional.of(all.toByteArray());
    }

    private static Sent sent(String name, byte[] bytes) {
        String ending = name.substring(name.lastIndexOf('.') + 1);
        byte[] whole = switch (ending) {
            case "css" -> utf8(WithoutComments.ofStyle(new String(bytes, StandardCharsets.UTF_8)));
            case "js" -> utf8(WithoutComments.ofScript(new String(bytes, StandardCharsets.UTF_8)));
            default -> bytes;
        };
        return new Sent(TYPES.get(ending), whole, Packed.tightly(whole), "W/\"" + digest(whole) + "\"");
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)).substring(0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static Optional<byte[]> read(String name) {
        try (InputStream in = ProgramFiles.class.getResourceAsStream("/static/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
