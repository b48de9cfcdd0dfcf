package benchpace.web.classes;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.LeavingEarly.Followed;
import benchpace.board.Watched;
import benchpace.board.playback.Playbacks;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.files.log.CommandJson;
import benchpace.files.log.EventJson;
import benchpace.live.Command;
import benchpace.live.EventTrait;
import benchpace.live.Recorded;
import benchpace.web.pairing.Access;
import benchpace.web.playback.PlaybackJson;
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
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.Iterator;

/** The JSON interface to classes. */
public final class ClassesApi {
    private final Boards boards;
    private final Playbacks playbacks;
    private final Access access;
    private final Streams streams;

    public ClassesApi(Boards boards, Playbacks playbacks, Access access, Streams streams) {
        this.boards = boards;
        this.playbacks = playbacks;
        this.access = access;
        this.streams = streams;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/classes", this::list);
        Reads.route(routes, "/api/classes/{id}", this::state);
        routes.post("/api/classes/{id}/commands", this::command);
        Reads.route(routes, "/api/classes/{id}/events", this::events);
        Reads.route(routes, "/api/classes/{id}/stream", ctx -> streams.serve(ctx, access.viewer(ctx), watched(ctx)));
    }

    private ClassBoard board(Context ctx) {
        return AskedClass.of(ctx, boards);
    }

    private Watched watched(Context ctx) {
        return AskedClass.watched(ctx, boards, playbacks);
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
        Watched watched = watched(ctx);
        ObjectNode state = StateJson.of(watched.view(), viewer);
        watched.playing().ifPresent(playing -> state.set("playback", PlaybackJson.of(playing)));
        Bodies.send(ctx, 200, state);
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
