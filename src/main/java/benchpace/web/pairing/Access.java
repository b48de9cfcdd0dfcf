package benchpace.web.pairing;

import benchpace.board.time.BoardTime;
import benchpace.store.Session;
import benchpace.store.Sessions;
import benchpace.store.sqlite.StoreException;
import benchpace.web.request.Bearer;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;

/**
 * Who may do what. A device is paired once ({@link Pairing}) and then carries a random token in a cookie that scripts
 * cannot read; the store knows only the token's hash. The wall needs no pairing.
 */
public final class Access implements AutoCloseable {
    static final String COOKIE = "benchpace";
    /** How long a device stays paired: a season of classes, and not for ever. */
    static final Duration STAYS = Duration.ofDays(30);
    /** How long it is known after that as one that was paired, so that strangers who guess do not keep it out. */
    private static final Duration KNOWN = Duration.ofDays(365);

    private final Sessions sessions;
    private final BoardTime clock;
    private final Pins pins;
    private final Keys keys;
    private final LastSeen lastSeen;
    private Instant openedAt;
    private final Predicate<Context> console;
    private volatile Runnable pinsAreNew = () -> { };

    public Access(Sessions sessions, InstantSource clock, Pins pins, Keys keys) {
        this(sessions, clock, pins, keys, Access::fromThisMachine);
    }

    /** @param console whether a request comes from the machine on which the board runs */
    public Access(Sessions sessions, InstantSource clock, Pins pins, Keys keys, Predicate<Context> console) {
        this.console = console;
        this.sessions = sessions;
        this.clock = BoardTime.of(clock);
        this.pins = pins;
        this.keys = keys;
        lastSeen = new LastSeen(sessions);
        openedAt = this.clock.instant();
    }

    /** Forgets devices that were paired so long ago that nobody asks for them; none while the clock is in doubt. */
    public void forgetOld() {
        if (clock.trusted()) {
            sessions.prune(clock.instant().minus(KNOWN));
        }
    }

    public Pins pins() {
        return pins;
    }

    public Keys keys() {
        return keys;
    }

    /** Who is asking; a guest if the request carries no valid token. */
    public Viewer viewer(Context ctx) {
        return session(ctx).map(s -> new Viewer(Role.of(s.role()), s.label(), s.mark())).orElse(Viewer.GUEST);
    }

    private Optional<Session> session(Context ctx) {
        Optional<Session> session = known(ctx).filter(this::stillPaired);
        session.ifPresent(s -> lastSeen.note(s.mark(), clock.instant()));
        return session;
    }

    public boolean atConsole(Context ctx) {
        return console.test(ctx);
    }

    /** No packet from elsewhere has this machine's own address, whichever that is, and gets an answer. */
    private static boolean fromThisMachine(Context ctx) {
        try {
            return ctx.ip().equals(ctx.req().getLocalAddr()) || InetAddress.getByName(ctx.ip()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** The pairing a device shows, even one that has run out. */
    Optional<Session> known(Context ctx) {
        return token(ctx).flatMap(sessions::find);
    }

    private boolean stillPaired(Session session) {
        return session.created().plus(STAYS).isAfter(clock.instant());
    }

    /**
     * The token of a device that was paired, if a request shows one, by a look at it alone and without the disk: enough
     * to give it a thread, not to let it do anything.
     */
    public Optional<String> shown(Request request) {
        String header = request.getHeaders().get(HttpHeader.AUTHORIZATION);
        try {
            return Bearer.in(header).or(() -> cookie(request)).filter(sessions::knows);
        } catch (StoreException e) {
            return Optional.empty(); // whoever asks the store next says what is wrong with it
        }
    }

    private static Optional<String> cookie(Request request) {
        return Request.getCookies(request).stream().filter(c -> c.getName().equals(COOKIE)).map(HttpCookie::getValue)
                .findFirst();
    }

    /** The mark of the device that is asking; empty if it is not paired. */
    public Optional<String> device(Context ctx) {
        return session(ctx).map(Session::mark);
    }

    /** The board's time was set right by so much: devices paired by the wrong one stay as long as others, and keys. */
    public synchronized void setRight(Duration by) {
        lastSeen.write();
        sessions.move(openedAt, clock.instant().minus(by), by);
        openedAt = openedAt.plus(by);
        keys.setRight(by);
    }

    public Instant now() {
        return clock.instant();
    }

    /** What waits are counted in: it goes on evenly, whatever the clock is set to meanwhile. */
    Instant lived() {
        return Instant.EPOCH.plus(clock.lived());
    }

    /** @throws Refused if the device is none of those that work at the table */
    public Viewer paired(Context ctx) {
        Viewer viewer = viewer(ctx);
        if (viewer.role() == Role.WALL) {
            throw new Refused(Problem.forbidden("This device is paired as a wall. Pair it with the PIN on the start "
                    + "page to do more."));
        }
        if (!viewer.role().staff()) {
            throw new Refused(Problem.unauthorized());
        }
        return viewer;
    }

    /** @throws Refused if the device is not an instructor's */
    public Viewer instructor(Context ctx) {
        Viewer viewer = paired(ctx);
        if (!viewer.instructor()) {
            throw new Refused(Problem.forbidden("Only the instructor may do that."));
        }
        return viewer;
    }

    // ---- letting in and signing out

    /** A device that came in. @param token what it is to carry from now on; what it carried before opens nothing */
    record LetIn(Role role, String token) { }

    /**
     * Asks and lets in, in one step, so that whoever comes while all are signed out is signed out with them.
     *
     * @param opens what the key or PIN opens, if anything
     */
    synchronized Optional<LetIn> letIn(Context ctx, String initials, Supplier<Optional<Role>> opens) {
        return opens.get().map(role -> {
            String token = Secrets.token();
            forget(ctx);
            sessions.create(token, role.token(), role == Role.HELPER ? initials : "", clock.instant());
            return new LetIn(role, token);
        });
    }

    void forget(Context ctx) {
        token(ctx).ifPresent(sessions::remove);
    }

    /** The devices that are paired, the newest first; each with when it was last seen. */
    public List<Session> devices() {
        return sessions.all().stream().filter(this::stillPaired).map(s -> new Session(s.role(), s.label(), s.created(),
                lastSeen.of(s.mark()).orElse(s.lastSeen()), s.mark(), s.name())).toList();
    }

    /** What people call the device of that mark; empty if nothing, or if it is not paired any more. */
    public String nameOf(String mark) {
        return mark.isEmpty() ? "" : sessions.all().stream().filter(s -> s.mark().equals(mark)).map(Session::name)
                .findFirst().orElse("");
    }

    /** @return whether there is a device of that mark */
    public boolean rename(String mark, String name) {
        return sessions.rename(mark, name);
    }

    /** @return the marks of those that are out now */
    public List<String> signOut(Predicate<Session> which) {
        return sessions.remove(which);
    }

    /** Every device is out, and no key or PIN that was told before opens; but for a PIN that was chosen. */
    public synchronized List<String> signOutAll() {
        keys.spendAll();
        drawPinsAnew();
        return sessions.remove(session -> true);
    }

    public synchronized void drawPinsAnew() {
        pins.drawAnew();
        pinsAreNew.run();
    }

    /** @param told runs each time when PINs were drawn anew while the board runs */
    public void whenPinsAreNew(Runnable told) {
        pinsAreNew = told;
    }

    // ---- what a request carries

    private static Optional<String> token(Context ctx) {
        return Bearer.in(ctx.header("Authorization")).or(() -> Optional.ofNullable(ctx.cookie(COOKIE)));
    }

    @Override public void close() {
        lastSeen.close();
    }
}
