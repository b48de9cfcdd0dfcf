package benchpace.web.data;

import benchpace.board.Backups;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.data.DataPage;
import benchpace.words.BackupWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The page of what is kept, for instructors. */
public final class DataPages {
    private final Backups backups;
    private final Access access;
    private final Screens screens;

    public DataPages(Backups backups, Access access, Screens screens) {
        this.backups = backups;
        this.access = access;
        this.screens = screens;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/data", this::page);
    }

    private void page(Context ctx) {
        access.instructor(ctx);
        Pages.html(ctx, screens.data(new DataPage(backups.folder().toString(), BackupWords.size(backups.size()))));
    }
}
