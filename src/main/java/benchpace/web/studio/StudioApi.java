package benchpace.web.studio;

import benchpace.board.StudioBoard;
import benchpace.files.Finding;
import benchpace.files.StudioJson;
import benchpace.plan.Studio;
import benchpace.plan.colour.Srgb;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.IfMatch;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.studio.ColourLook;
import benchpace.words.StudioWords;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The JSON interface to whose room it is. Who changes it says in {@code If-Match} what they looked at; how it was
 * before comes back, so that it can be had back.
 */
public final class StudioApi {
    private final StudioBoard studio;
    private final Access access;

    public StudioApi(StudioBoard studio, Access access) {
        this.studio = studio;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/studio", this::read);
        routes.put("/api/studio", this::change);
        Reads.route(routes, "/api/studio/colour", this::colour);
    }

    private void read(Context ctx) {
        access.paired(ctx);
        Studio now = studio.now();
        ctx.header("ETag", quoted(now));
        Bodies.send(ctx, 200, StudioJson.write(now));
    }

    private void change(Context ctx) {
        access.instructor(ctx);
        IfMatch looked = IfMatch.required(ctx);
        List<Finding> problems = new ArrayList<>();
        Studio wanted = StudioJson.read(Bodies.object(ctx), problems::add)
                .orElseThrow(() -> new Refused(Problem.badFields(problems)));
        Optional<Studio> before = studio.change(wanted, now -> looked.matches(StudioJson.tag(now)));
        if (before.isEmpty()) {
            ctx.header("ETag", quoted(studio.now()));
            throw new Refused(Problem.of(StudioWords.changedMeanwhile()));
        }
        ctx.header("ETag", quoted(wanted)); // of this change, whoever has changed it since
        ObjectNode told = StudioJson.write(wanted);
        told.set("before", StudioJson.write(before.get()));
        Bodies.send(ctx, 200, told);
    }

    /** GET {@code ?of=%231f4d43}: how a colour is shown before anybody chooses it; empty for none of one's own. */
    private void colour(Context ctx) {
        access.instructor(ctx);
        String typed = StudioJson.colour(Objects.requireNonNullElse(ctx.queryParam("of"), ""))
                .orElseThrow(() -> new Refused(Problem.unprocessable("\"of\" must be a colour, like #1f4d43.")));
        Bodies.send(ctx, 200, ColourLook.of(Optional.of(typed).filter(colour -> !colour.isEmpty()).map(Srgb::of)));
    }

    private static String quoted(Studio studio) {
        return '"' + StudioJson.tag(studio) + '"';
    }
}
