package benchpace.web.request;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Objects;

/** Whether whoever asks has the very answer already (RFC 9110, 13.1.2). */
public final class KnownTag {
    private static final String WEAK = "W/";

    private KnownTag() { }

    /** @param tag of the answer; weak and strong ones are compared alike (RFC 9110, 8.8.3.2) */
    public static boolean is(Context ctx, String tag) {
        String known = Objects.requireNonNullElse(ctx.header("If-None-Match"), "");
        return Arrays.stream(known.split(",")).map(String::strip).anyMatch(t -> opaque(t).equals(opaque(tag)));
    }

    private static String opaque(String tag) {
        return tag.startsWith(WEAK) ? tag.substring(WEAK.length()) : tag;
    }
}
