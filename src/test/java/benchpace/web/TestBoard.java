package benchpace.web;

import benchpace.board.Backups;
import benchpace.board.Boards;
import benchpace.board.Erasing;
import benchpace.board.Forgetting;
import benchpace.board.HistoryBoard;
import benchpace.board.LeavingEarly;
import benchpace.board.PrepBoard;
import benchpace.board.ProblemReports;
import benchpace.board.ShelfBoard;
import benchpace.board.Sweeping;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.plans.PlanBook;
import benchpace.board.playback.PlaybackModels;
import benchpace.board.playback.Playbacks;
import benchpace.board.time.BoardTime;
import benchpace.board.view.ViewMaker;
import benchpace.files.Json;
import benchpace.files.plan.PlanFolder;
import benchpace.files.plan.StarterPlans;
import benchpace.plan.SeatNumber;
import benchpace.store.EventLog;
import benchpace.store.FileSweep;
import benchpace.store.PairingKeys;
import benchpace.store.SavedPlans;
import benchpace.store.SeatCodes;
import benchpace.store.Sessions;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.web.entrance.EntranceLimits;
import benchpace.web.guest.GuestCodes;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Keys;
import benchpace.web.pairing.Pins;
import benchpace.web.pairing.Secrets;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The real board on a free port over a real file, with a clock that the test moves. */
public final class TestBoard implements AutoCloseable {
    public static final String PIN = "135790";
    public static final String HELPER_PIN = "246801";
    public static final String WALL_PIN = "864209";
    public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    private static final PlaybackModels PLAYED = new PlaybackModels(new PlanCureClock(), PosteriorPaceWatch::new, ZONE);
    private static final AtomicLong COMMANDS = new AtomicLong();
    private static final Logger ROOT = Logger.getLogger("");
    private static final Logger SERVER = Logger.getLogger("org.eclipse.jetty");

    static {
        ROOT.setLevel(Level.WARNING);
        SERVER.setLevel(Level.SEVERE);
    }

    public InstantSource clock;
    private final Function<EventLog, ? extends InstantSource> clocks;
    private final Path data;
    private final StreamLimits limits;
    private final EntranceLimits entrance;
    private final ViewMaker maker;
    private final HttpClient client = HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();
    private Database database;
    private SqliteEventLog log;
    private Boards boards;
    private Server server;
    private ShelfBoard shelf;
    private PrepBoard prep;
    private Playbacks playbacks;
    private HistoryBoard history;
    private Erasing erasing;
    private Access access;
    private GuestCodes codes;
    private int port;
    private String instructor = "";
    private String helper = "";

    public TestBoard(Path data, InstantSource clock, StreamLimits limits) {
        this(data, log -> clock, limits, EntranceLimits.USUAL, plain());
    }

    /** @param clocks asked for the board's time at each start */
    public TestBoard(Path data, Function<EventLog, ? extends InstantSource> clocks, StreamLimits limits) {
        this(data, clocks, limits, EntranceLimits.USUAL, plain());
    }

    /** @param maker with models of the test's own */
    public TestBoard(Path data, InstantSource clock, StreamLimits limits, ViewMaker maker) {
        this(data, log -> clock, limits, EntranceLimits.USUAL, maker);
    }

    private TestBoard(Path data, Function<EventLog, ? extends InstantSource> clocks, StreamLimits limits,
                      EntranceLimits entrance, ViewMaker maker) {
        this.entrance = entrance;
        this.data = data;
        this.maker = maker;
        this.clocks = clocks;
        this.limits = limits;
        start();
    }

    private static ViewMaker plain() {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZONE);
    }

    public static TestBoard open(Path data) {
        return open(data, StreamLimits.USUAL);
    }

    public static TestBoard open(Path data, StreamLimits limits) {
        return new TestBoard(data, new TestClock(), limits);
    }

    public static TestBoard open(Path data, EntranceLimits entrance) {
        TestClock clock = new TestClock();
        return new TestBoard(data, log -> clock, StreamLimits.USUAL, entrance, plain());
    }

    /** @param clocks makes the clock anew at each start */
    public static TestBoard open(Path data, Function<EventLog, ? extends InstantSource> clocks, ViewMaker maker) {
        return new TestBoard(data, clocks, StreamLimits.USUAL, EntranceLimits.USUAL, maker);
    }

    private void start() {
        database = Database.open(data);
        log = new SqliteEventLog(database);
        clock = clocks.apply(log);
        shelf = ShelfBoard.open(database, clock);
        boards = new Boards(log, clock, maker, Secrets::idEnding, new LeavingEarly(shelf));
        prep = new PrepBoard(database, boards, clock);
        playbacks = new Playbacks(boards, of -> PLAYED, Secrets::idEnding);
        history = new HistoryBoard(boards, shelf, database);
        Keys keys = new Keys(new PairingKeys(database), clock);
        access = new Access(new Sessions(database), clock, Pins.of(PIN, HELPER_PIN, WALL_PIN), keys,
                request -> request.ip().equals("127.0.0.1")); // its other addresses are strangers' here
        codes = new GuestCodes(new SeatCodes(database), clock);
        OlderSecrets.takeOver(new Settings(database), keys, codes, boards);
        PlanBook plans = PlanBook.open(StarterPlans::all, new SavedPlans(database),
                new PlanFolder(data.resolve("plans")), clock);
        Sweeping sweeping = new Sweeping(new FileSweep(database), boards::atHand, clock);
        Backups backups = new Backups(data, new Settings(database), BoardTime.of(clock), ZONE, "Benchpace");
        Forgetting forgetting = new Forgetting(boards, shelf, new Settings(database), sweeping, backups, clock);
        erasing = new Erasing(BoardTime.of(clock), List.of(
                new Erasing.Part("words of candles that left the shelf", shelf::eraseDue),
                new Erasing.Part("classes that were deleted a day ago", boards::eraseDeleted),
                new Erasing.Part("guests of classes that are over", forgetting::forgetDue),
                new Erasing.Part("codes of seats whose class is over", () -> codes.forgetThoseOf(boards)),
                new Erasing.Part("devices that were paired a year ago", access::forgetOld),
                new Erasing.Part("unused parts of the file with words", sweeping::sweepBySelf)));
        server = new Server("127.0.0.1", port, Set.of("loft.example"), n -> "http://127.0.0.1:" + n + "/", boards,
                playbacks, shelf, prep, history, plans, new Settings(database), access, codes, erasing, forgetting,
                backups,
                ProblemReports.running(database, boards::classes, "Benchpace", List::of), clock, ZONE, limits,
                entrance, Optional.empty());
        port = server.port();
    }

    private void stop() {
        server.close();
        erasing.close();
        playbacks.close();
        history.close();
        prep.close();
        boards.close();
        database.close();
    }

    /** The same data and the same port, as after the program was stopped and started again. */
    public void restart() {
        stop();
        start();
    }

    /** Takes the board off the network until {@code restart} or {@code comeBack}. */
    public void goAway() {
        stop();
    }

    public void comeBack() {
        start();
    }

    @Override public void close() {
        stop();
    }

    public int port() {
        return port;
    }

    EventLog log() {
        return log;
    }

    public Boards boards() {
        return boards;
    }

    public Playbacks playbacks() {
        return playbacks;
    }

    public ShelfBoard shelf() {
        return shelf;
    }

    public PrepBoard prep() {
        return prep;
    }

    public HistoryBoard history() {
        return history;
    }

    public Erasing erasing() {
        return erasing;
    }

    public Server server() {
        return server;
    }

    public Access access() {
        return access;
    }

    public String helperKey() {
        return access.keys().helper();
    }

    /** The code at a seat of a class. */
    public String guestCode(String classId, int seat) {
        return codes.codes(classId, List.of(new SeatNumber(seat))).get(seat);
    }

    public TestClock testClock() {
        return (TestClock) clock;
    }

    public URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }

    // ---- asking

    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(uri(path)).timeout(Duration.ofSeconds(20));
    }

    public Reply send(HttpRequest.Builder request) {
        try {
            return Reply.of(client.send(request.build(), HttpResponse.BodyHandlers.ofString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static HttpRequest.Builder by(HttpRequest.Builder request, String token) {
        return token.isEmpty() ? request : request.header("Authorization", "Bearer " + token);
    }

    /** @param token of whoever asks; empty for a guest */
    public Reply get(String path, String token) {
        return send(by(request(path), token));
    }

    public Reply post(String path, String body, String token) {
        return send(by(request(path), token).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    // ---- who asks

    public String pair(ObjectNode body) {
        return post("/api/pair", Json.text(body), "").ok().text("token");
    }

    public Reply change(String method, String path, String body, String token) {
        return send(by(request(path), token).header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(body)));
    }

    public Reply put(String path, String body, String token) {
        return change("PUT", path, body, token);
    }

    public Reply delete(String path, String token) {
        return change("DELETE", path, "", token);
    }

    public String instructor() {
        if (instructor.isEmpty()) {
            instructor = pair(Json.object().put("pin", PIN));
        }
        return instructor;
    }

    public String helper() {
        if (helper.isEmpty()) {
            helper = pair(Json.object().put("pin", HELPER_PIN).put("initials", "ab"));
        }
        return helper;
    }

    // ---- a class and its commands

    /** Eight seats of the demo's evening plan; seats 1 and 2 are called Ida and Tomasz. */
    public String evening() {
        return create("{\"planId\":\"evening-pour\",\"seats\":8,\"name\":\"Thursday\",\"names\":[\"Ida\",\"Tomasz\"],"
                + "\"place\":\"The Tallow Loft, Quay Lane, Marrowby\"}");
    }

    public String create(String body) {
        return post("/api/classes", body, instructor()).ok().text("id");
    }

    public static String freshId() {
        return "c-" + COMMANDS.incrementAndGet();
    }

    public static ObjectNode command(String type) {
        return Json.object().put("commandId", freshId()).put("type", type);
    }

    public static ObjectNode finish(int seat, String step) {
        return command("finish-step").put("seat", seat).put("step", step);
    }

    public static ObjectNode opening(String step) {
        return command("open-step").put("step", step);
    }

    public Reply tap(String id, ObjectNode command) {
        return tap(id, command, instructor());
    }

    public Reply tap(String id, ObjectNode command, String token) {
        return post("/api/classes/" + id + "/commands", Json.text(command), token);
    }

    /** The wicks opened, everybody through the glass and all but one through the wicks, some seconds apart. */
    public void stuckAtWicks(String id, int stuck) {
        tap(id, opening("wicks")).ok();
        for (String step : new String[] {"vessel", "wicks"}) {
            testClock().advanceMinutes(2);
            int seats = state(id).json().get("seats").size();
            for (int seat = 1; seat <= seats; seat++) {
                testClock().advance(Duration.ofSeconds(9));
                if (seat != stuck || step.equals("vessel")) {
                    tap(id, finish(seat, step)).ok();
                }
            }
        }
    }

    /** The class state as JSON. */
    public Reply state(String id) {
        return get("/api/classes/" + id, instructor()).ok();
    }
}
