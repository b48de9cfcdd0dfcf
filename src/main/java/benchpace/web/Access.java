package benchpace.web;

import benchpace.board.BoardTime;
import benchpace.files.Json;
import benchpace.store.Session;
import benchpace.store.Sessions;
import benchpace.store.StoreException;
import benchpace.web.screen.Role;
import benchpace.web.screen.Viewer;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;

/**
 * Who may do what. A device is paired once, by the one-time key of a link or by a PIN, and then carries a random token
 * in a cookie that scripts cannot read; the store knows only the token's hash. The wall needs no pairing.
 */
public final class Access {
    private static final String COOKIE = "benchpace";
    /** How long a device stays paired: a season of classes, and not for ever. */
    private static final Duration STAYS = Duration.ofDays(30);
    /** How long it is known after that as one that was paired, so that strangers who guess do not keep it out. */
    private static final Duration KNOWN = Duration.ofDays(365);
    private static final int LONGEST_INITIALS = 3;

    private final Sessions sessions;
    private final BoardTime clock;
    private final String instructorPin;
    private final String helperPin;
    private final String helperKey;
    private final Predicate<Context> console;
    private final Throttle throttle = new Throttle();
    private final Set<String> oneTimeKeys = ConcurrentHashMap.newKeySet();

    /** @param helperKey lets any number of helpers in, so that one code on the wall of the back room serves all */
    public Access(Sessions sessions, InstantSource clock, String instructorPin, String helperPin, String helperKey) {
        this(sessions, clock, instructorPin, helperPin, helperKey, Access::fromThisMachine);
    }

    /** @param console whether a request comes from the machine on which the board runs */
    Access(Sessions sessions, InstantSource clock, String instructorPin, String helperPin, String helperKey,
           Predicate<Context> console) {
        this.console = console;
        this.sessions = sessions;
        this.clock = BoardTime.of(clock);
        this.instructorPin = instructorPin;
        this.helperPin = helperPin;
        this.helperKey = helperKey;
        if (this.clock.trusted()) {
            sessions.prune(clock.instant().minus(KNOWN));
        }
    }

    /** No packet from elsewhere has this machine's own address, whichever that is, and gets an answer. */
    private static boolean fromThisMachine(Context ctx) {
        try {
            return ctx.ip().equals(ctx.req().getLocalAddr()) || InetAddress.getByName(ctx.ip()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** A key that pairs one instructor's device and is then spent. */
    public String newInstructorKey() {
        String key = Secrets.token();
        oneTimeKeys.add(key);
        return key;
    }

    public String helperKey() {
        return helperKey;
    }

    public String helperPin() {
        return helperPin;
    }

    public String instructorPin() {
        return instructorPin;
    }

    /** Who is asking; a guest if the request carries no valid token. */
    Viewer viewer(Context ctx) {
        return token(ctx)
                .flatMap(this::session)
                .map(s -> new Viewer(Role.valueOf(s.role().toUpperCase(Locale.ROOT)), s.label(), s.mark()))
                .orElse(Viewer.GUEST);
    }

    private Optional<Session> session(String token) {
        return sessions.find(token).filter(s -> s.created().plus(STAYS).isAfter(clock.instant()));
    }

    /**
     * Whether a request comes from a device that was paired, by a look at its token alone and without the disk: enough
     * to give it a thread, not to let it do anything.
     */
    boolean seemsPaired(Request request) {
        String header = request.getHeaders().get(HttpHeader.AUTHORIZATION);
        Optional<String> cookie = Request.getCookies(request).stream().filter(c -> c.getName().equals(COOKIE))
                .map(HttpCookie::getValue).findFirst();
        try {
            return bearer(header).or(() -> cookie).filter(sessions::knows).isPresent();
        } catch (StoreException e) {
            return false; // whoever asks the store next says what is wrong with it
        }
    }

    /** The mark of the device that is asking; empty if it is not paired. */
    Optional<String> device(Context ctx) {
        return token(ctx).flatMap(this::session).map(Session::mark);
    }

    /** Who asks for a live screen: only strangers may have to give way. */
    StreamPlaces.Asker asker(Context ctx) {
        Optional<String> device = device(ctx);
        return new StreamPlaces.Asker(device.isPresent() || console.test(ctx), device, ctx.ip());
    }

    private Caller caller(Context ctx) {
        return Caller.of(ctx.ip(), console.test(ctx), token(ctx).flatMap(sessions::find));
    }

    /** What was guessed at of late. */
    Throttle.Guesses guesses() {
        Instant lived = lived();
        Throttle.Guesses guesses = throttle.guesses(lived);
        return new Throttle.Guesses(guesses.wrong(), guesses.addresses(), guesses.shutUntil()
                .map(until -> clock.instant().plus(Duration.between(lived, until))));
    }

    /** What waits are counted in: it goes on evenly, whatever the clock is set to meanwhile. */
    private Instant lived() {
        return Instant.EPOCH.plus(clock.lived());
    }

    /** @throws Refused if the device is not paired */
    Viewer paired(Context ctx) {
        Viewer viewer = viewer(ctx);
        if (viewer.role() == Role.GUEST) {
            throw new Refused(Problem.unauthorized());
        }
        return viewer;
    }

    /** @throws Refused if the device is not an instructor's */
    Viewer instructor(Context ctx) {
        Viewer viewer = paired(ctx);
        if (viewer.role() != Role.INSTRUCTOR) {
            throw new Refused(Problem.forbidden("Only the instructor may do that."));
        }
        return viewer;
    }

    /** POST /api/pair: {@code {"pin"}} or {@code {"key"}}, and {@code "initials"} for a helper. */
    void pair(Context ctx) {
        JsonNode body = Bodies.object(ctx);
        String pin = Bodies.text(body, "pin", 64);
        String key = Bodies.text(body, "key", 64);
        if (pin.isEmpty() && key.isEmpty()) {
            throw new Refused(Problem.unprocessable("\"pin\" is missing."));
        }
        Role role = (key.isEmpty() ? byPin(pin, ctx) : byKey(key, ctx)).orElseThrow(() ->
                new Refused(new Problem(401, "wrong-pin", "The PIN or link is not right",
                        "That PIN or link is not right, or the link was used before.")));
        String initials = role == Role.HELPER ? initials(body) : "";
        String token = Secrets.token();
        sessions.create(token, role.name().toLowerCase(Locale.ROOT), initials, clock.instant());
        ctx.cookie(new Cookie(COOKIE, token, "/", (int) STAYS.toSeconds(), ctx.req().isSecure(), true, null,
                SameSite.STRICT));
        Bodies.send(ctx, 200, Json.object().put("role", role.name().toLowerCase(Locale.ROOT)).put("token", token));
    }

    /** Keys are far too long to guess, so they open while PINs have to wait. */
    private Optional<Role> byKey(String key, Context ctx) {
        if (oneTimeKeys.remove(key)) {
            throttle.clear(caller(ctx));
            return Optional.of(Role.INSTRUCTOR);
        }
        return Secrets.same(helperKey, key) ? Optional.of(Role.HELPER) : Optional.empty();
    }

    private Optional<Role> byPin(String pin, Context ctx) {
        Throttle.Try tried = throttle.attempt(caller(ctx), lived(), () -> whose(pin));
        tried.pause().ifPresent(wait -> {
            long seconds = Math.max(1, wait.toSeconds() + 1);
            ctx.header("Retry-After", Long.toString(seconds));
            throw new Refused(new Problem(429, "too-many-tries", "Too many wrong PINs",
                    "Wait " + seconds + " seconds, or open the link from the board's console."));
        });
        return tried.role();
    }

    private Optional<Role> whose(String pin) {
        return Secrets.same(instructorPin, pin) ? Optional.of(Role.INSTRUCTOR)
                : Secrets.same(helperPin, pin) ? Optional.of(Role.HELPER) : Optional.empty();
    }

    private static String initials(JsonNode body) {
        String given = Bodies.text(body, "initials", 40).strip();
        String letters = given.codePoints().filter(Character::isLetterOrDigit).limit(LONGEST_INITIALS)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        return letters.isEmpty() ? "H" : letters.toUpperCase(Locale.ROOT);
    }

    /** POST /api/unpair: forgets this device. @param forgotten is told its mark */
    void unpair(Context ctx, Consumer<String> forgotten) {
        device(ctx).ifPresent(forgotten);
        token(ctx).ifPresent(sessions::remove);
        ctx.removeCookie(COOKIE, "/");
        ctx.status(204);
    }

    private static Optional<String> token(Context ctx) {
        return bearer(ctx).or(() -> Optional.ofNullable(ctx.cookie(COOKIE)));
    }

    static Optional<String> bearer(Context ctx) {
        return bearer(ctx.header("Authorization"));
    }

    private static Optional<String> bearer(String header) {
        return header != null && header.regionMatches(true, 0, "Bearer ", 0, 7)
                ? Optional.of(header.substring(7).strip()) : Optional.empty();
    }
}
