package benchpace.web.request;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * What every request must satisfy whoever sends it: the host it names is this machine (against DNS rebinding), and a
 * page of another site cannot make a browser act here. Plain http on a local network has no {@code Sec-Fetch} headers
 * and no {@code Secure} cookies, so this rests on {@code Host} and {@code Origin}.
 */
public final class Guard {
    public static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; connect-src 'self'; font-src 'self'; media-src 'self'; "
            + "worker-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; "
            + "frame-ancestors 'none'";
    private static final Pattern ADDRESS = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-fA-F:.%]+]");

    private final Set<String> names;
    private final Supplier<Optional<String>> localName;

    /**
     * @param names     the names, besides plain addresses, under which this machine is reached; lower case
     * @param localName the one that it has announced on the local network, if it has
     */
    public Guard(Set<String> names, Supplier<Optional<String>> localName) {
        this.names = Set.copyOf(names);
        this.localName = localName;
    }

    /** Runs before every request. */
    public void check(Context ctx) {
        ctx.header("Cache-Control", "no-store"); // unless the address itself knows that what it gives is no secret
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        String host = ctx.header("Host");
        if (host == null || !known(host)) {
            throw new Refused(new Problem(421, "foreign-host", "This is not that host",
                    "This board is not reached under that name. Use its address, or start it with --host-name NAME."));
        }
        // which the router heeds, while all that looks at the first line does not
        if (ctx.header("X-HTTP-Method-Override") != null) {
            throw new Refused(Problem.badRequest("A request is what its first line says: X-HTTP-Method-Override is not "
                    + "taken here."));
        }
        if (changes(ctx) && foreignOrigin(ctx, host)) {
            throw new Refused(new Problem(403, "foreign-origin", "The request comes from another site",
                    "Only the board's own pages may do that."));
        }
    }

    private boolean known(String host) {
        String name = host.replaceFirst(":\\d{1,5}$", "").toLowerCase(Locale.ROOT);
        return ADDRESS.matcher(name).matches() || names.contains(name)
                || localName.get().filter(name::equals).isPresent();
    }

    static boolean changes(Context ctx) {
        return switch (ctx.method().name()) {
            case "GET", "HEAD", "OPTIONS" -> false;
            default -> true;
        };
    }

    /** A bearer token is not sent by a browser on its own, so such a request needs no origin. */
    private static boolean foreignOrigin(Context ctx, String host) {
        if (Bearer.in(ctx.header("Authorization")).isPresent()) {
            return false;
        }
        String origin = ctx.header("Origin");
        if (origin == null) {
            String site = ctx.header("Sec-Fetch-Site");
            boolean cookie = ctx.header("Cookie") != null;
            return site != null ? !site.equals("same-origin") && !site.equals("none") : cookie;
        }
        return !own(origin, host);
    }

    /** Whether the request names this board's own page as its origin, as browsers do with every form they send. */
    public static boolean namesOwnOrigin(Context ctx) {
        String origin = ctx.header("Origin");
        String host = ctx.header("Host");
        return origin != null && host != null && own(origin, host);
    }

    private static boolean own(String origin, String host) {
        try {
            return host.equalsIgnoreCase(URI.create(origin).getAuthority());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
