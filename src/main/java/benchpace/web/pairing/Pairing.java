package benchpace.web.pairing;

import benchpace.files.Json;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Role;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Lets devices in, by the key of a link or by a PIN, and lets them go again. */
public final class Pairing {
    private static final int LONGEST_INITIALS = 3;

    private final Access access;
    private final Consumer<String> ended;
    private final Throttle throttle = new Throttle();

    /** @param ended is told the mark of a device that is out */
    public Pairing(Access access, Consumer<String> ended) {
        this.access = access;
        this.ended = ended;
    }

    public void routes(RoutesConfig routes) {
        routes.post("/api/pair", this::pair);
        routes.post("/api/pair/link", this::link);
        routes.post("/api/unpair", this::unpair);
    }

    /** What was guessed at of late. */
    public Throttle.Guesses guesses() {
        Instant lived = access.lived();
        Throttle.Guesses guesses = throttle.guesses(lived);
        return new Throttle.Guesses(guesses.wrong(), guesses.addresses(), guesses.shutUntil()
                .map(until -> access.now().plus(Duration.between(lived, until))));
    }

    /** POST /api/pair: {@code {"pin"}} or {@code {"key"}}, and {@code "initials"} for a helper. */
    private void pair(Context ctx) {
        JsonNode body = Bodies.object(ctx);
        String pin = Bodies.text(body, "pin", 64);
        String key = Bodies.text(body, "key", 64);
        if (pin.isEmpty() && key.isEmpty()) {
            throw new Refused(Problem.unprocessable("\"pin\" is missing."));
        }
        String initials = initials(body);
        Optional<String> before = access.device(ctx);
        Access.LetIn in = access.letIn(ctx, initials, () -> key.isEmpty() ? byPin(pin, ctx) : byKey(key, ctx))
                .orElseThrow(Pairing::notRight);
        before.ifPresent(ended);
        ctx.cookie(new Cookie(Access.COOKIE, in.token(), "/", (int) Access.STAYS.toSeconds(), ctx.req().isSecure(),
                true, null, SameSite.STRICT));
        Bodies.send(ctx, 200, Json.object().put("role", in.role().token()).put("token", in.token()));
    }

    private static Refused notRight() {
        return new Refused(new Problem(401, "wrong-pin", "The PIN or link is not right",
                "That PIN or link is not right, or the link was used before."));
    }

    /** POST /api/pair/link: {@code {"key"}} of a link that many use; what it would pair as, pairing nobody. */
    private void link(Context ctx) {
        String key = Bodies.text(Bodies.object(ctx), "key", 64);
        Role role = access.keys().openedByMany(key).orElseThrow(Pairing::notRight);
        Bodies.send(ctx, 200, Json.object().put("role", role.token()));
    }

    private Caller caller(Context ctx) {
        return Caller.of(ctx.ip(), access.atConsole(ctx), access.known(ctx));
    }

    /** Keys are far too long to guess, so they open while PINs have to wait. */
    private Optional<Role> byKey(String key, Context ctx) {
        Optional<Role> role = access.keys().open(key);
        if (role.filter(Role.INSTRUCTOR::equals).isPresent()) {
            throttle.clear(caller(ctx));
        }
        return role;
    }

    private Optional<Role> byPin(String pin, Context ctx) {
        Throttle.Try tried = throttle.attempt(caller(ctx), access.lived(), () -> access.pins().whose(pin));
        tried.pause().ifPresent(wait -> {
            long seconds = Math.max(1, wait.toSeconds() + 1);
            ctx.header("Retry-After", Long.toString(seconds));
            throw new Refused(new Problem(429, "too-many-tries", "Too many wrong PINs",
                    "Wait " + seconds + " seconds, or open the link from the board's console."));
        });
        return tried.role();
    }

    private static String initials(JsonNode body) {
        String given = Bodies.text(body, "initials", 40).strip();
        String letters = given.toUpperCase(Locale.ROOT) // first, as one small letter may be two great ones
                .codePoints().filter(Character::isLetterOrDigit).limit(LONGEST_INITIALS)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        return letters.isEmpty() ? "H" : letters;
    }

    /** POST /api/unpair: forgets this device. */
    private void unpair(Context ctx) {
        Optional<String> device = access.device(ctx);
        access.forget(ctx);
        device.ifPresent(ended); // only now, or a screen that comes back at once would stay
        ctx.removeCookie(Access.COOKIE, "/");
        ctx.status(204);
    }
}
