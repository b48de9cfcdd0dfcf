package benchpace.web.style;

import benchpace.plan.colour.Light;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.studio.StudioSheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The page of the look, and the sheets that hold it to one light. */
public final class StylePages {
    private static final String SHEET = ".css";

    private final Access access;
    private final Screens screens;
    private final Samples samples;

    public StylePages(Access access, Screens screens, ZoneId zone) {
        this.access = access;
        this.screens = screens;
        this.samples = new Samples(zone);
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/style", this::page);
        Reads.route(routes, "/style/{light}", this::sheet);
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        String held = Optional.ofNullable(ctx.queryParam("light")).orElse("");
        Optional<Light> light = light(held);
        if (light.isEmpty() && !held.isEmpty()) {
            throw new Refused(Problem.unprocessable("\"light\" is \"day\" or \"night\"."));
        }
        Pages.html(ctx, screens.style(samples.given(light), viewer));
    }

    private void sheet(Context ctx) {
        access.paired(ctx);
        Light light = Optional.of(ctx.pathParam("light")).filter(file -> file.endsWith(SHEET))
                .flatMap(file -> light(file.substring(0, file.length() - SHEET.length())))
                .orElseThrow(() -> new Refused(Problem.notFound("There is no such light.")));
        ctx.contentType("text/css; charset=utf-8").result(samples.tokens().sheet(light)
                + StudioSheet.held(screens.studioOf(""), light));
    }

    private static Optional<Light> light(String name) {
        return Stream.of(Light.values()).filter(l -> l.name().toLowerCase(Locale.ROOT).equals(name)).findFirst();
    }
}
