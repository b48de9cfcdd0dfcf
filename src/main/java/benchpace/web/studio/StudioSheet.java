package benchpace.web.studio;

import benchpace.board.StudioBoard;
import benchpace.plan.Studio;
import benchpace.plan.colour.Lead;
import benchpace.plan.colour.Light;
import benchpace.plan.colour.Srgb;
import benchpace.web.request.KnownTag;
import benchpace.web.request.Reads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;

/**
 * The style sheet that every page links after the one of all colours: the studio's own, by day and by night. It holds
 * no secret, since the wall shows it to everybody; browsers keep it, and ask each time whether it still holds.
 */
public final class StudioSheet {
    private final StudioBoard studio;

    public StudioSheet(StudioBoard studio) {
        this.studio = studio;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/studio.css", this::send);
    }

    private void send(Context ctx) {
        String sheet = of(studio.now());
        String tag = '"' + UUID.nameUUIDFromBytes(sheet.getBytes(StandardCharsets.UTF_8)).toString() + '"';
        ctx.header("Cache-Control", "no-cache").header("ETag", tag);
        if (KnownTag.is(ctx, tag)) {
            ctx.status(304);
            return;
        }
        ctx.contentType("text/css; charset=utf-8").result(sheet);
    }

    /** The usual colours where none was chosen, so that a page that had another gives that up. */
    static String of(Studio studio) {
        Optional<Srgb> chosen = studio.colour().map(Srgb::of);
        return ":root { " + colours(chosen, Light.DAY) + " }\n"
                + "@media (prefers-color-scheme: dark) { :root { " + colours(chosen, Light.NIGHT) + " } }\n";
    }

    /** What a page that is held to one light says after all its other colours, in a shadow tree, too. */
    public static String held(Studio studio, Light light) {
        return ":root, :host { " + colours(studio.colour().map(Srgb::of), light) + " }\n";
    }

    private static String colours(Optional<Srgb> chosen, Light light) {
        Lead lead = Lead.of(chosen, light);
        return "--lead: " + lead.lead() + "; --on-lead: " + lead.onLead() + ";";
    }
}
