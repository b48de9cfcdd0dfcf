package benchpace.web.data;

import benchpace.board.Backups;
import benchpace.board.Boards;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.data.BackupCard;
import benchpace.web.screen.data.DataPage;
import benchpace.words.BackupWords;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.InstantSource;
import java.time.ZoneId;

/** The page of what is kept, for instructors. */
public final class DataPages {
    private final Backups backups;
    private final Boards boards;
    private final Access access;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;

    public DataPages(Backups backups, Boards boards, Access access, Screens screens, InstantSource clock,
                     ZoneId zone) {
        this.backups = backups;
        this.boards = boards;
        this.clock = clock;
        this.zone = zone;
        this.access = access;
        this.screens = screens;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/data", this::page);
        new BackupApi(backups, access).routes(routes);
    }

    private void page(Context ctx) {
        access.instructor(ctx);
        String folder = backups.folder().toString();
        Pages.html(ctx, screens.data(new DataPage(folder, BackupWords.size(backups.size()),
                BackupCard.of(backups.state(), backups.last(), !boards.all().isEmpty(), folder, clock.instant(),
                        new Times(zone)))));
    }
}
