package benchpace.web.setup;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.Deletion;
import benchpace.board.ShelfBoard;
import benchpace.board.StudioBoard;
import benchpace.board.plans.PlanBook;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.files.log.EventJson;
import benchpace.live.ClassEvent;
import benchpace.live.ClassEvent.Place;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Refusal;
import benchpace.live.Setup;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Secrets;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.IfMatch;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.RefusalWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Sets classes up, changes that until they begin, and deletes those that were set up by mistake. */
public final class SetupApi {
    private final Boards boards;
    private final PlanBook plans;
    private final ShelfBoard shelf;
    private final StudioBoard studio;
    private final Access access;
    private final ZoneId zone;
    /** Held from looking how a class is set up until that is changed. */
    private final Object changing = new Object();

    public SetupApi(Boards boards, PlanBook plans, ShelfBoard shelf, StudioBoard studio, Access access,
                    ZoneId zone) {
        this.boards = boards;
        this.plans = plans;
        this.shelf = shelf;
        this.studio = studio;
        this.access = access;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        routes.post("/api/classes", this::create);
        routes.put("/api/classes/{id}/setup", this::change);
        routes.delete("/api/classes/{id}", this::delete);
        routes.post("/api/classes/{id}/restore", this::restore);
    }

    private void create(Context ctx) {
        access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        Setup setup = SetupReading.of(body, Optional.empty(), plans, studio.now().place(), zone,
                boards.clocks().forNew());
        ClassBoard board = boards.create(setup, "instructor");
        ctx.header("Location", "/api/classes/" + board.id());
        Bodies.send(ctx, 201, told(board));
    }

    private static ObjectNode told(ClassBoard board) {
        return Json.object().put("id", board.id()).put("name", board.live().name())
                .put("startsAt", board.live().startsAt().toString())
                .put("promisedEnd", board.live().promisedEnd().toString())
                .put("status", Words.of(board.stage()));
    }

    private void change(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        synchronized (changing) {
            requireLooked(ctx, board.live());
            change(ctx, board, viewer);
        }
        ctx.header("ETag", tag(board.live()));
        Bodies.send(ctx, 200, told(board).put("seq", board.live().seq()));
    }

    /** Who says in {@code If-Match} what they looked at overwrites nothing that they have not seen. */
    private static void requireLooked(Context ctx, LiveClass live) {
        String now = tag(live);
        if (ctx.header("If-Match") != null && !live.begun()
                && !IfMatch.required(ctx).matches(now.substring(1, now.length() - 1))) {
            ctx.header("ETag", now);
            throw new Refused(new Problem(412, "changed-meanwhile", "It was changed meanwhile", "This class was "
                    + "changed on another page meanwhile, so nothing was changed here. Open it anew to look at that, "
                    + "or save once more to have all of it as it is here."));
        }
    }

    /** Names how a class is set up just now, in its quotation marks. */
    static String tag(LiveClass live) {
        String setup = Json.text(EventJson.fields(new ClassEvent.ClassSetUpAgain(asItStands(live))));
        return '"' + UUID.nameUUIDFromBytes(setup.getBytes(StandardCharsets.UTF_8)).toString() + '"';
    }

    private void change(Context ctx, ClassBoard board, Viewer viewer) {
        Setup setup = SetupReading.of(Bodies.object(ctx), Optional.of(asItStands(board.live())), plans,
                studio.now().place(), zone, board.now());
        Answer answer = board.submit(new Command(Command.own("setup.") + Secrets.token(), "instructor",
                viewer.device(), board.now(), new ClassEvent.ClassSetUpAgain(setup)));
        if (answer instanceof Answer.Refused refused && !isSo(refused.reason())) {
            throw new Refused(Problem.of(RefusalWords.of(board.live().plan(), refused.reason())));
        }
    }

    /** Said once more it is as it was wished. */
    private static boolean isSo(Refusal reason) {
        return reason instanceof Refusal.AlreadySo already && already.what() == Refusal.State.SET_UP;
    }

    /** How it was set up, with the guests as they were corrected since, and the seats that are there. */
    static Setup asItStands(LiveClass live) {
        Setup setup = live.setup();
        List<Place> places = live.seats().stream().map(seat -> new Place(seat.number(), seat.name(), seat.party(),
                seat.candle().filter(candle -> live.plan().candle(candle).isPresent()), seat.mind())).toList();
        return new Setup(setup.plan(), setup.name(), setup.startsAt(), setup.promisedEnd(), setup.numbering(), places);
    }

    private void delete(Context ctx) {
        access.instructor(ctx);
        String id = ctx.pathParam("id");
        String typed = ctx.req().getContentLengthLong() == 0 || ctx.header("Content-Type") == null
                ? "" : Bodies.text(Bodies.object(ctx), "confirm", 200);
        if (boards.unreadable().contains(id)) {
            deleteUnreadable(ctx, id, typed);
            return;
        }
        ClassBoard board = AskedClass.of(ctx, boards);
        Deletion deletion = boards.delete(board, typed);
        if (deletion instanceof Deletion.Done done) {
            tellDeleted(ctx, id, done.restorable());
            return;
        }
        throw new Refused(new Problem(409, "needs-its-name", "The class has begun", "The class has begun. To delete it "
                + "with all that was written down in it, type its name: " + board.live().name() + "."));
    }

    /** Nobody knows its name, so its id stands for that. */
    private void deleteUnreadable(Context ctx, String id, String typed) {
        if (!typed.strip().equals(id)) {
            throw new Refused(new Problem(409, "needs-its-name", "The class cannot be read", "The class cannot be "
                    + "read, and nobody knows its name. To delete it with all that was written down in it, give its "
                    + "id: " + id + "."));
        }
        boards.deleteUnreadable(id);
        tellDeleted(ctx, id, false);
    }

    private void tellDeleted(Context ctx, String id, boolean restorable) {
        long onShelf = shelf.shelf().standing().filter(e -> e.classId().equals(id)).count();
        Bodies.send(ctx, 200, Json.object().put("restorable", restorable).put("candlesOnShelf", onShelf));
    }

    private void restore(Context ctx) {
        access.instructor(ctx);
        ClassBoard board = boards.restore(ctx.pathParam("id")).orElseThrow(() -> new Refused(Problem.notFound(
                "There is no such class to be had back.")));
        Bodies.send(ctx, 200, told(board));
    }
}
