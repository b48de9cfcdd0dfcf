package benchpace.web.cure;

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
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.plans.PlanBook;
import benchpace.board.playback.PlaybackModels;
import benchpace.board.playback.Playbacks;
import benchpace.board.time.BoardTime;
import benchpace.board.view.ViewMaker;
import benchpace.files.Json;
import benchpace.files.plan.PlanFolder;
import benchpace.files.plan.StarterPlans;
import benchpace.plan.SeatNumber;
import benchpace.store.FileSweep;
import benchpace.store.PairingKeys;
import benchpace.store.Rooms;
import benchpace.store.SavedPlans;
import benchpace.store.SeatCodes;
import benchpace.store.Sessions;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.web.Server;
import benchpace.web.guest.GuestCodes;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Keys;
import benchpace.web.pairing.Pins;
import benchpace.web.pairing.Secrets;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A board on a free port that computes the cure, with a clock that the test moves, asked over the network. */
public final class CureBoard implements AutoCloseable, InstantSource {
    static final Instant START = Instant.parse("2027-03-04T18:00:00Z");
    private static final String PIN = "246810";
    private static final String HELPER_PIN = "135790";

    private final Path data;
    private final HttpClient client = HttpClient.newHttpClient();
    private volatile Instant now = START;
    private int commands;
    private Database database;
    private Boards boards;
    private HistoryBoard history;
    private Erasing erasing;
    private Server server;
    private Access access;
    private GuestCodes codes;
    private String token = "";

    public CureBoard(Path data) {
        this.data = data;
        start();
    }

    private void start() {
        database = Database.open(data);
        RoomLessons lessons = new RoomLessons(new Rooms(database), this);
        StepLessons steps = new StepLessons(new StepBeliefs(database), this);
        ViewMaker maker = new ViewMaker(lessons.cureClock(), new PosteriorPaceWatch(steps), ZoneId.of("UTC"));
        ShelfBoard shelf = ShelfBoard.open(database, this);
        boards = new Boards(new SqliteEventLog(database), this, maker, Secrets::idEnding, new LeavingEarly(shelf),
                lessons, steps);
        history = new HistoryBoard(boards, shelf, database);
        access = new Access(new Sessions(database), this, Pins.of(PIN, HELPER_PIN, "000111"),
                new Keys(new PairingKeys(database), this));
        PlanBook plans = PlanBook.open(StarterPlans::all, new SavedPlans(database),
                new PlanFolder(data.resolve("plans")), this);
        codes = new GuestCodes(new SeatCodes(database), this);
        erasing = new Erasing(BoardTime.of(this), List.of());
        Playbacks playbacks = new Playbacks(boards, of -> PlaybackModels.of(of, lessons, steps, ZoneId.of("UTC")),
                Secrets::idEnding);
        Backups backups = new Backups(data, new Settings(database), BoardTime.of(this), ZoneId.of("UTC"), "Benchpace");
        Forgetting forgetting = new Forgetting(boards, shelf, new Settings(database),
                new Sweeping(new FileSweep(database), boards::all, this), backups, this);
        server = new Server("127.0.0.1", 0, Set.of(), n -> "http://127.0.0.1:" + n + "/", boards,
                playbacks, shelf, new PrepBoard(database, boards, this), history, plans,
                new Settings(database), access, codes,
                erasing, forgetting,
                backups,
                ProblemReports.running(database, boards::classes, "Benchpace", List::of), this,
                ZoneId.of("UTC"), Optional.empty());
    }

    @Override public Instant instant() {
        return now;
    }

    public CureBoard minute(double minute) {
        now = START.plusMillis(Math.round(minute * 60_000));
        return this;
    }

    /** The code at a seat of a class. */
    public String guestCode(String classId, int seat) {
        return codes.codes(classId, List.of(new SeatNumber(seat))).get(seat);
    }

    public void restart() {
        close();
        token = "";
        start();
    }

    @Override public void close() {
        server.close();
        erasing.close();
        history.close();
        boards.close();
        database.close();
    }

    public Server server() {
        return server;
    }

    /** How many classes cannot be read back. */
    public int unreadable() {
        return boards.unreadable().size();
    }

    public String address() {
        return "http://127.0.0.1:" + server.port();
    }

    /** The link that pairs a browser as the instructor's. */
    public String link() {
        return address() + "/#key=" + access.keys().newInstructorKey();
    }

    public HttpResponse<String> get(String path, String bearer) {
        return send(HttpRequest.newBuilder(URI.create(address() + path)).header("Authorization", "Bearer " + bearer));
    }

    public HttpResponse<String> get(String path) {
        return get(path, instructor());
    }

    public HttpResponse<String> post(String path, JsonNode body, String bearer) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address() + path))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(Json.text(body)));
        return send(bearer.isEmpty() ? request : request.header("Authorization", "Bearer " + bearer));
    }

    public HttpResponse<String> delete(String path, String bearer) {
        return send(HttpRequest.newBuilder(URI.create(address() + path)).header("Authorization", "Bearer " + bearer)
                .DELETE());
    }

    /** A change of what was looked at when it had that tag; none is said if it is empty. */
    public HttpResponse<String> change(String method, String path, String tag, String bearer) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address() + path))
                .method(method, HttpRequest.BodyPublishers.noBody());
        request = bearer.isEmpty() ? request : request.header("Authorization", "Bearer " + bearer);
        return send(tag.isEmpty() ? request : request.header("If-Match", "\"" + tag + "\""));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.timeout(Duration.ofSeconds(30)).build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    public static JsonNode json(HttpResponse<String> answer) {
        try {
            return Json.read(answer.body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String instructor() {
        if (token.isEmpty()) {
            token = paired(PIN);
        }
        return token;
    }

    public String helper() {
        return paired(HELPER_PIN);
    }

    private String paired(String pin) {
        return json(post("/api/pair", Json.object().put("pin", pin), "")).get("token").textValue();
    }

    public String create(String plan) {
        return json(post("/api/classes", Json.object().put("planId", plan)
                .put("place", "The Tallow Loft, Quay Lane, Marrowby"), instructor())).get("id").textValue();
    }

    public static ObjectNode wish(String type) {
        return Json.object().put("type", type);
    }

    public HttpResponse<String> tap(String id, ObjectNode wish) {
        commands++;
        return post("/api/classes/" + id + "/commands", wish.put("commandId", "c" + commands), instructor());
    }

    /** A class of the evening plan in which the seats pour one after the other from that minute on. */
    public String poured(double minute, int... seats) {
        String id = create("evening-pour");
        minute(minute);
        for (String step : new String[] {"welcome", "wicks", "fragrance", "before-wax", "mix", "pour"}) {
            tap(id, wish("open-step").put("step", step));
        }
        for (int seat : seats) {
            tap(id, wish("finish-step").put("step", "pour").put("seat", seat));
        }
        return id;
    }

    /** What is left to do by hand after the pour. */
    void centred(String id, int... seats) {
        for (int seat : seats) {
            tap(id, wish("finish-step").put("step", "centre").put("seat", seat));
        }
    }

    JsonNode state(String id) {
        return json(get("/api/classes/" + id));
    }

    public JsonNode seat(String id, int seat) {
        return state(id).get("seats").get(seat - 1);
    }
}
