package benchpace.web.entrance;

import benchpace.files.OddInput;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.io.ByteArrayOutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A nearly sound request for an address that is served, in bytes as they go over the wire. */
final class OddRequest {
    private static final Pattern PARAMETER = Pattern.compile("\\{([a-z]+)}");
    private static final List<String> QUERIES = List.of("q", "after", "ids", "form", "plan", "place", "minutes",
            "a-fill", "a-diameter", "a-wall", "a-brim", "a-wax", "a-material", "a-table", "a-room", "a-pour",
            "b-fill", "a-fragrance", "a-draught", "step", "x");
    private static final List<String> HEADERS = List.of("Accept", "Content-Type", "Cookie", "Origin", "Range",
            "If-Match", "If-None-Match", "Last-Event-ID", "Accept-Encoding", "Sec-Fetch-Site", "X-Forwarded-For",
            "Forwarded", "Expect", "TE", "Upgrade", "Authorization");
    private static final List<String> HEADER_VALUES = List.of("", "*", "*/*", "text/html", "text/html;q=x", "gzip",
            "null", "http://localhost", "http://evil.example", "bytes=0-1", "bytes=9-1", "bytes=-", "\"1\"", "W/\"x\"",
            "bytes=99999999999-", "-1", "99999999999999999999", "cross-site", "application/json", "multipart/form-data",
            "a/b; charset=nothing", "application/x-www-form-urlencoded", "benchpace=; benchpace=x", "=;=;;=",
            "Bearer", "Bearer ", "Basic OjE=", "bearer \u00e9", "\u00ff\u00fe", "websocket", "127.0.0.1");
    private static final List<String> UNSOUND = List.of("%", "%zz", "%ff", "%c0%80", "%00", "%2e%2e%2f", "%ed%a0%80",
            "a%2fb", ";x=1", "..", ".");

    private final Random random;
    private final OddInput odd;
    private final Map<String, String> known;

    /** @param known sound values of the parameters of addresses */
    OddRequest(Random random, Map<String, String> known) {
        this.random = random;
        this.odd = new OddInput(random);
        this.known = known;
    }

    private <T> T of(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    /** @param body a sound one for that address; @param tokens of who may ask, and of nobody */
    byte[] bytes(Endpoint endpoint, JsonNode body, List<String> tokens) {
        boolean reads = endpoint.method.equals(HandlerType.GET) || endpoint.method.equals(HandlerType.HEAD);
        String method = reads && endpoint.path.endsWith("/stream") ? "HEAD" : endpoint.method.name();
        if (random.nextInt(60) == 0) {
            method = of(List.of("OPTIONS", "TRACE", "PATCH", "PUT", "DELETE", "get", "PROPFIND"));
        }
        byte[] sent = reads && random.nextInt(20) > 0 ? new byte[0] : body(body);
        StringBuilder head = new StringBuilder(method).append(' ').append(path(endpoint.path)).append(" HTTP/1.1\r\n")
                .append("Host: localhost\r\nConnection: close\r\n");
        String token = of(tokens);
        if (!token.isEmpty()) {
            head.append("Authorization: Bearer ").append(token).append("\r\n");
        }
        if (!reads || sent.length > 0) {
            head.append("Content-Length: ").append(sent.length).append("\r\n");
        }
        for (int i = random.nextInt(4); i > 2; i--) {
            head.append(of(HEADERS)).append(": ").append(of(HEADER_VALUES)).append("\r\n");
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1));
        all.writeBytes(sent);
        return all.toByteArray();
    }

    private byte[] body(JsonNode sound) {
        if (random.nextInt(12) == 0) {
            return (of(QUERIES) + "=" + encoded(odd.text()) + "&=" + "%").getBytes(StandardCharsets.ISO_8859_1);
        }
        return odd.json(sound);
    }

    private String path(String pattern) {
        Matcher parameter = PARAMETER.matcher(pattern);
        StringBuilder path = new StringBuilder();
        while (parameter.find()) {
            String value = random.nextInt(6) > 0 ? known.getOrDefault(parameter.group(1), "1") : value();
            parameter.appendReplacement(path, Matcher.quoteReplacement(value));
        }
        parameter.appendTail(path);
        for (int i = random.nextInt(5); i > 2; i--) {
            path.append(path.indexOf("?") < 0 ? '?' : '&').append(of(QUERIES)).append('=').append(value());
        }
        return path.toString();
    }

    /** Encoded as it should be, or as it should not. */
    private String value() {
        String text = odd.text();
        return switch (random.nextInt(6)) {
            case 0 -> of(UNSOUND);
            case 1 -> Integer.toString(random.nextInt(12));
            case 2 -> Double.toString(random.nextInt(4_000) / 10.0);
            default -> encoded(text.substring(0, Math.min(300, text.length())));
        };
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
