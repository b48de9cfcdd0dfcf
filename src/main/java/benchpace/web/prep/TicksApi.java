package benchpace.web.prep;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.PrepBoard;
import benchpace.board.prep.Ticked;
import benchpace.files.Json;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.prep.PrepItem;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/**
 * Ticks things off of a class's lists. The same request again changes nothing: what is ticked off already is left as
 * it is, with the name of whoever did so first.
 */
public final class TicksApi {
    private static final String ADDRESS = "/api/classes/{id}/prep/ticks";
    private static final String ONE = ADDRESS + "/{item}";

    private final Boards boards;
    private final PrepBoard prep;
    private final Access access;

    public TicksApi(Boards boards, PrepBoard prep, Access access) {
        this.boards = boards;
        this.prep = prep;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, ADDRESS, ctx -> {
            access.paired(ctx);
            Bodies.send(ctx, 200, json(prep.ticked(AskedClass.of(ctx, boards).id())));
        });
        routes.put(ONE, ctx -> set(ctx, true));
        routes.delete(ONE, ctx -> set(ctx, false));
    }

    private void set(Context ctx, boolean done) {
        Viewer viewer = access.paired(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        String item = ctx.pathParam("item");
        boolean listed = PrepItem.of(item).filter(i -> i.isOf(board.live().plan())).isPresent();
        if (!listed && (done || prep.ticked(board.id()).of(item).isEmpty())) {
            throw new Refused(new Problem(404, "not-listed", "It is not on a list",
                    "There is nothing of that kind on the lists of this class any more."));
        }
        Bodies.send(ctx, 200, json(prep.set(board.id(), item, done, by(viewer))));
    }

    private static String by(Viewer viewer) {
        return viewer.role() == Role.HELPER ? viewer.initials() : "instructor";
    }

    /** All that is ticked off. */
    static ObjectNode json(Ticked ticked) {
        ObjectNode json = Json.object().put("revision", ticked.revision());
        ObjectNode ticks = json.putObject("ticks");
        ticked.ticks().values().forEach(tick -> ticks.putObject(tick.item()).put("by", tick.by())
                .put("at", tick.at().toString()));
        return json;
    }
}
