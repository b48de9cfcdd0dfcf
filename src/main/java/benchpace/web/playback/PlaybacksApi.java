package benchpace.web.playback;

import benchpace.board.Boards;
import benchpace.board.playback.Mark;
import benchpace.board.playback.Playback;
import benchpace.board.playback.Playbacks;
import benchpace.board.view.Playing;
import benchpace.files.Json;
import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.PlaybackWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Opens past evenings, moves them along and ends them. Whoever is paired may open one: it changes nothing. */
public final class PlaybacksApi {
    private static final String ONE = "/api/playbacks/{id}";
    private static final int LONGEST_ID = 80;

    private final Boards boards;
    private final Playbacks playbacks;
    private final Access access;

    public PlaybacksApi(Boards boards, Playbacks playbacks, Access access) {
        this.boards = boards;
        this.playbacks = playbacks;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        routes.post("/api/playbacks", this::open);
        Reads.route(routes, ONE, this::tell);
        routes.put(ONE, this::set);
        routes.delete(ONE, this::end);
    }

    private void open(Context ctx) {
        Viewer viewer = access.paired(ctx);
        JsonNode body = Bodies.object(ctx);
        String classId = Bodies.text(body, "classId", LONGEST_ID);
        boolean demo = flag(body, "demo").orElse(false);
        if (classId.isEmpty() != demo) {
            throw new Refused(Problem.unprocessable("Either \"classId\" names a class, or \"demo\" is true."));
        }
        Optional<Integer> speed = speed(body) // read first: what is refused opens nothing
                .or(() -> demo ? Optional.of(Playback.FASTEST) : Optional.empty()); // offered as one in two minutes
        Playback playback = demo ? playbacks.open(Demo.recordedEvening(), viewer.device()) : ofClass(classId, viewer);
        playback.set(new Playback.Wish(Optional.empty(), speed, Optional.empty()));
        Bodies.send(ctx, 201, Json.object().put("id", playback.id()));
    }

    private Playback ofClass(String classId, Viewer viewer) {
        return playbacks.open(AskedClass.named(classId, boards), viewer.device())
                .orElseThrow(() -> new Refused(Problem.of(PlaybackWords.notOver())));
    }

    private Playback asked(Context ctx) {
        return playbacks.find(ctx.pathParam("id")).orElseThrow(AskedClass::noPlayback);
    }

    private static Playing playing(Playback playback) {
        return playback.playing().orElseThrow();
    }

    private Playback moved(Context ctx) {
        Viewer viewer = access.paired(ctx);
        Playback playback = asked(ctx);
        if (!Bands.mayMove(viewer, playing(playback))) {
            throw new Refused(Problem.forbidden("Somebody else plays this evening: only they and the instructor may "
                    + "move it along."));
        }
        return playback;
    }

    private void tell(Context ctx) {
        access.paired(ctx);
        Playback playback = asked(ctx);
        Plan plan = playback.live().plan();
        ObjectNode told = state(playback);
        ArrayNode marks = told.putArray("marks");
        for (Mark mark : playback.marks()) {
            marks.addObject().put("at", mark.at().toString()).put("flag", mark instanceof Mark.Flagged)
                    .put("note", PlaybackWords.isNote(mark))
                    .put("words", PlaybackWords.of(plan, mark));
        }
        Bodies.send(ctx, 200, told);
    }

    private static ObjectNode state(Playback playback) {
        ObjectNode state = Json.object().put("id", playback.id()).put("name", playback.live().name());
        state.setAll(PlaybackJson.of(playing(playback)));
        return state;
    }

    private void set(Context ctx) {
        Playback playback = moved(ctx);
        JsonNode body = Bodies.object(ctx);
        Playback.Wish wish = new Playback.Wish(at(body, playing(playback)), speed(body), flag(body, "paused"));
        playback.set(wish);
        Bodies.send(ctx, 200, state(playback));
    }

    private static Optional<Instant> at(JsonNode body, Playing playing) {
        if (!body.has("at")) {
            return Optional.empty();
        }
        try {
            Instant at = Instant.parse(body.path("at").asText());
            if (!at.isBefore(playing.from()) && !at.isAfter(playing.until())) {
                return Optional.of(at);
            }
        } catch (DateTimeParseException e) {
            // told below
        }
        throw new Refused(Problem.unprocessable("\"at\" must be a time of this evening, from " + playing.from() + " to "
                + playing.until() + "."));
    }

    private static Optional<Integer> speed(JsonNode body) {
        JsonNode speed = body.path("speed");
        if (!body.has("speed")) {
            return Optional.empty();
        }
        if (!speed.isInt() || speed.intValue() < Playback.SLOWEST || speed.intValue() > Playback.FASTEST) {
            throw new Refused(Problem.unprocessable("\"speed\" must be a whole number from " + Playback.SLOWEST + " to "
                    + Playback.FASTEST + "."));
        }
        return Optional.of(speed.intValue());
    }

    /** A field that is true or false. @return empty if it is not there */
    private static Optional<Boolean> flag(JsonNode body, String field) {
        if (!body.has(field)) {
            return Optional.empty();
        }
        if (!body.path(field).isBoolean()) {
            throw new Refused(Problem.unprocessable("\"" + field + "\" must be true or false."));
        }
        return Optional.of(body.path(field).booleanValue());
    }

    private void end(Context ctx) {
        playbacks.end(moved(ctx).id());
        ctx.status(204);
    }
}
