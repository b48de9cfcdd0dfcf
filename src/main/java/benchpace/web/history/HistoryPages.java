package benchpace.web.history;

import benchpace.board.HistoryBoard;
import benchpace.history.PastClass;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.KnownTag;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.history.HistoryAddress;
import benchpace.web.screen.history.HistoryPage;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Past classes side by side. For the instructor, as the look back on each of them is. */
public final class HistoryPages {
    private final HistoryBoard history;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;

    public HistoryPages(HistoryBoard history, Access access, Screens screens, ZoneId zone) {
        this.history = history;
        this.access = access;
        this.screens = screens;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/history", this::page);
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        if (!viewer.instructor()) {
            throw new Refused(Problem.forbidden("The history of classes is the instructor's; it needs the "
                    + "instructor's PIN or link."));
        }
        HistoryAddress asked = HistoryAddress.read(name -> Optional.ofNullable(ctx.queryParam(name)));
        List<PastClass> classes = history.classes();
        String tag = tag(List.of(classes, viewer, screens.studioOf("")));
        ctx.header("ETag", tag);
        if (KnownTag.is(ctx, tag)) {
            ctx.status(304);
            return;
        }
        Pages.html(ctx, screens.history(HistoryPage.of(new HistoryPage.Given(classes, asked), viewer,
                new Times(zone))));
    }

    /** An open page asks every few seconds, and mostly nothing has changed. @param of all that a page is made of */
    private static String tag(List<?> of) {
        return '"' + UUID.nameUUIDFromBytes(of.toString().getBytes(StandardCharsets.UTF_8)).toString() + '"';
    }
}
