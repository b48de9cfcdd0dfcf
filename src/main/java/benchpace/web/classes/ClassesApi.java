package benchpace.web.classes;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.LeavingEarly.Followed;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.files.log.CommandJson;
import benchpace.files.log.EventJson;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.EventTrait;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.stream.Streams;
import benchpace.words.RefusalWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;

/** The JSON interface to classes. */
public final class ClassesApi {
    private final Boards boards;
    private final PlanBook plans;
    private final Access access;
    private final Streams streams;

    public ClassesApi(Boards boards, PlanBook plans, Access access, Streams streams) {
        this.boards = boards;
        this.plans = plans;
        this.access = access;
        this.streams = streams;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/classes", this::list);
        routes.post("/api/classes", this::create);
        Reads.route(routes, "/api/classes/{id}", this::state);
        routes.post("/api/classes/{id}/commands", this::command);
        Reads.route(routes, "/api/classes/{id}/events", this::events);
        Reads.route(routes, "/api/classes/{id}/stream", ctx -> streams.serve(ctx, access.viewer(ctx), board(ctx)));
    }

    private ClassBoard board(Context ctx) {
        return AskedClass.of(ctx, boards);
    }

    private void list(Context ctx) {
        access.paired(ctx);
        ArrayNode list = Json.mapper().createArrayNode();
        boards.all().stream()
                .sorted(Comparator.comparing((ClassBoard b) -> b.live().createdAt()).reversed())
                .forEach(b -> list.addObject().put("id", b.id()).put("name", b.live().name())
                        .put("startsAt", b.live().startsAt().toString())
                        .put("status", Words.of(b.stage())));
        Bodies.send(ctx, 200, list);
    }

    private void state(Context ctx) {
        Viewer viewer = access.paired(ctx);
        Bodies.send(ctx, 200, StateJson.of(board(ctx).view(), viewer));
    }

    private void create(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        Instant now = boards.clocks().forNew();
        Plan plan = plan(body);
        int seats = seats(body, plan);
        String name = Bodies.text(body, "name", 80).strip();
        Instant startsAt = startsAt(body, now);
        List<ClassEvent.Place> places = places(body, seats);
        ClassBoard board = boards.create(plan, name.isEmpty() ? plan.name() : name, startsAt, places, by(viewer));
        ctx.header("Location", "/api/classes/" + board.id());
        Bodies.send(ctx, 201, Json.object().put("id", board.id()).put("name", board.live().name())
                .put("startsAt", board.live().startsAt().toString())
                .put("status", Words.of(board.stage())));
    }

    private Plan plan(JsonNode body) {
        JsonNode given = body.get("plan");
        String planId = Bodies.text(body, "planId", 60);
        if ((given == null) == planId.isEmpty()) {
            throw new Refused(Problem.unprocessable("Give either \"plan\" or \"planId\"."));
        }
        if (given == null) {
            return plans.find(planId).map(BookPlan::plan).orElseThrow(() -> new Refused(Problem.unprocessable(
                    "There is no plan \"" + planId + "\"; there are "
                    + plans.all().stream().map(BookPlan::id).collect(Collectors.joining(", ")) + ".")));
        }
        PlanReading reading = PlanFile.read(given);
        return reading.ifSound().orElseThrow(() -> new Refused(Problem.unsound(reading.problems())));
    }

    private static int seats(JsonNode body, Plan plan) {
        JsonNode seats = body.get("seats");
        if (seats == null || seats.isNull()) {
            return plan.usualSeats();
        }
        if (!seats.isIntegralNumber() || !seats.canConvertToInt() || seats.intValue() < 1
                || seats.intValue() > SeatNumber.MOST) {
            throw new Refused(Problem.unprocessable("\"seats\" must be a whole number from 1 to "
                    + SeatNumber.MOST + "."));
        }
        return seats.intValue();
    }

    private static Instant startsAt(JsonNode body, Instant now) {
        String text = Bodies.text(body, "startsAt", 40);
        if (text.isEmpty()) {
            return now;
        }
        try {
            Instant at = java.time.OffsetDateTime.parse(text).toInstant();
            if (at.isBefore(now.minus(java.time.Duration.ofDays(400)))
                    || at.isAfter(now.plus(java.time.Duration.ofDays(800)))) {
                throw new Refused(Problem.unprocessable("\"startsAt\" is too far away: " + text + "."));
            }
            return at;
        } catch (DateTimeParseException e) {
            throw new Refused(Problem.unprocessable("\"startsAt\" must be a time such as 2027-03-04T18:30:00Z."));
        }
    }

    /** {@code "names": ["Ada", ""]}: first names in seat order, those that want theirs shown. */
    private static List<ClassEvent.Place> places(JsonNode body, int seats) {
        JsonNode names = body.get("names");
        if (names != null && !names.isNull() && !names.isArray()) {
            throw new Refused(Problem.unprocessable("\"names\" must be a list of texts."));
        }
        if (names != null && names.size() > seats) {
            throw new Refused(Problem.unprocessable("The names reach to seat " + names.size() + ", but there "
                    + (seats == 1 ? "is 1 seat" : "are " + seats + " seats") + ". Add seats or leave names out."));
        }
        List<ClassEvent.Place> places = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            JsonNode name = names == null || names.isNull() ? null : names.get(i);
            requireName(name, i + 1);
            places.add(new ClassEvent.Place(new SeatNumber(i + 1), name == null ? "" : name.textValue().strip()));
        }
        return places;
    }

    private static void requireName(JsonNode name, int seat) {
        if (name == null || Bodies.isLine(name, EventJson.LONGEST_NAME)) {
            return;
        }
        boolean tooLong = name.isTextual() && name.textValue().length() > EventJson.LONGEST_NAME;
        throw new Refused(Problem.unprocessable("The name for seat " + seat + (tooLong
                ? " is too long: at most " + EventJson.LONGEST_NAME + " characters, a first name is enough."
                : " must be text on one line.")));
    }

    private void command(Context ctx) {
        Viewer viewer = access.paired(ctx);
        ClassBoard board = board(ctx);
        JsonNode body = Bodies.object(ctx);
        int clocks = clocks(board, body);
        Command command = CommandJson.read(body, by(viewer), board.now()).on(viewer.device());
        if (viewer.role() != Role.INSTRUCTOR && !EventTrait.HELPERS_MAY.of(command.wish())) {
            throw new Refused(Problem.forbidden("Only the instructor may do that ("
                    + EventJson.type(command.wish()) + ")."));
        }
        Answer answer = board.submit(command, clocks);
        if (answer instanceof Answer.Refused refused) {
            throw new Refused(Problem.of(RefusalWords.of(board.live().plan(), refused.reason())));
        }
        Answer.Recorded recorded = (Answer.Recorded) answer;
        Bodies.send(ctx, 200, Json.object().put("seq", recorded.seq()).put("duplicate", recorded.duplicate())
                .put("offTheShelf", recorded.candle() == Followed.OFF)
                .put("onTheShelf", recorded.candle() == Followed.ON));
    }

    /** A tap that waited says by which of the class's clocks it was made; another was made by the present one. */
    private static int clocks(ClassBoard board, JsonNode body) {
        JsonNode clocks = body.path("clocks");
        return body.has("at") && clocks.isInt() && clocks.intValue() >= 0
                ? clocks.intValue() : board.live().clocks();
    }

    private static String by(Viewer viewer) {
        return viewer.role() == Role.HELPER ? viewer.initials() : "instructor";
    }

    private void events(Context ctx) {
        access.paired(ctx);
        long after = after(ctx.queryParam("after"));
        Iterator<InputStream> lines = board(ctx).eventsAfter(after).stream().map(ClassesApi::line).iterator();
        ctx.contentType("application/x-ndjson; charset=utf-8").result(new SequenceInputStream(new Enumeration<>() {
            @Override public boolean hasMoreElements() {
                return lines.hasNext();
            }

            @Override public InputStream nextElement() {
                return lines.next();
            }
        }));
    }

    /** Made when its turn comes: the events of a long class are not all kept in memory for each who asks. */
    private static InputStream line(Recorded recorded) {
        return new ByteArrayInputStream((Json.text(EventJson.line(recorded)) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static long after(String text) {
        if (text == null || text.isEmpty()) {
            return 0;
        }
        if (!text.matches("\\d{1,18}")) {
            throw new Refused(Problem.badRequest("\"after\" must be the number of an event."));
        }
        return Long.parseLong(text);
    }
}
