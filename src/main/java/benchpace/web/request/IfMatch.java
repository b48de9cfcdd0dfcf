package benchpace.web.request;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The versions that a change is meant for (RFC 9110, 13.1.1): entity tags, compared strongly, so that a weak one never
 * matches; or any version, if it says {@code *}.
 */
public final class IfMatch {
    /** RFC 9110, 8.8.3: printable characters but the quotation mark, and whatever is not ASCII. */
    private static final Pattern TAG = Pattern.compile("\\s*(W/)?\"([\\x21\\x23-\\x7E\\x80-\\xFF]*)\"\\s*(?:,|$)");

    private final boolean any;
    private final List<String> tags;

    private IfMatch(boolean any, List<String> tags) {
        this.any = any;
        this.tags = tags;
    }

    /** @throws Refused with 428 (RFC 6585, 3) if the request says nothing of it, and 400 if it cannot be read */
    public static IfMatch required(Context ctx) {
        List<String> lines = Collections.list(ctx.req().getHeaders("If-Match"));
        if (lines.isEmpty()) {
            throw new Refused(new Problem(428, "version-not-said", "The version is not said",
                    "Say in If-Match which version this is meant for: the ETag it was read with."));
        }
        String header = String.join(",", lines).strip();
        return header.equals("*") ? new IfMatch(true, List.of()) : new IfMatch(false, strongTags(header)
                .orElseThrow(() -> new Refused(Problem.badRequest("If-Match must hold the ETag as it was given, in its "
                        + "quotation marks, or *."))));
    }

    private static Optional<List<String>> strongTags(String header) {
        List<String> strong = new ArrayList<>();
        Matcher matcher = TAG.matcher(header);
        int end = 0;
        while (end < header.length()) {
            if (!matcher.find(end) || matcher.start() != end) {
                return Optional.empty();
            }
            if (matcher.group(1) == null) {
                strong.add(matcher.group(2));
            }
            end = matcher.end();
        }
        return end == 0 ? Optional.empty() : Optional.of(strong);
    }

    /** Whether it is meant for what has this tag. @param tag without its quotation marks */
    public boolean matches(String tag) {
        return any || tags.contains(tag);
    }
}
