package benchpace.web;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.web.screen.Screens;
import benchpace.web.screen.Viewer;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The page on which a class is looked back on. For the instructor: it says who was slow. */
final class ReportPages {
    private final Boards boards;
    private final Access access;
    private final Screens screens;

    ReportPages(Boards boards, Access access, Screens screens) {
        this.boards = boards;
        this.access = access;
        this.screens = screens;
    }

    void routes(RoutesConfig routes) {
        Reads.route(routes, "/classes/{id}/report", this::page);
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        if (!viewer.instructor()) {
            throw new Refused(Problem.forbidden("The look back on a class is the instructor's; it needs the "
                    + "instructor's PIN or link."));
        }
        ClassBoard board = AskedClass.of(ctx, boards);
        Pages.html(ctx, screens.report(board.report(), viewer));
    }
}
