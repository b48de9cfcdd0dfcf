package benchpace.web.request;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/** In which codings whoever asks can read an answer (RFC 9110, 12.5.3). */
public final class Accepted {
    private static final Pattern REFUSED = Pattern.compile("gzip\\s*;\\s*q=0(\\.0*)?\\s*(,|$)");

    private Accepted() { }

    public static boolean gzip(Context ctx) {
        String accepted = Objects.requireNonNullElse(ctx.header("Accept-Encoding"), "").toLowerCase(Locale.ROOT);
        return accepted.contains("gzip") && !REFUSED.matcher(accepted).find();
    }
}
