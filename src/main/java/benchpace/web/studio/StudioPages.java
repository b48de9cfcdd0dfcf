package benchpace.web.studio;

import benchpace.board.StudioBoard;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.studio.StudioFields;
import benchpace.web.screen.studio.StudioPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** The page on which an instructor says whose room it is. */
public final class StudioPages {
    private final StudioBoard studio;
    private final Access access;
    private final Screens screens;

    public StudioPages(StudioBoard studio, Access access, Screens screens) {
        this.studio = studio;
        this.access = access;
        this.screens = screens;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/studio", this::page);
    }

    private void page(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        Shell shell = new Shell("Studio", "studio", List.of(), "", "", "UTC", viewer.role().token(),
                viewer.initials());
        Pages.html(ctx, screens.studio(new StudioPage(shell, new StudioFields(studio.now()))));
    }
}
