package benchpace.web.data;

import benchpace.board.Backups;
import benchpace.board.Boards;
import benchpace.board.Erasing;
import benchpace.board.Forgetting;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.data.BackupCard;
import benchpace.web.screen.data.DataPage;
import benchpace.web.screen.data.GuestsCard;
import benchpace.web.screen.data.UnreadableCard;
import benchpace.words.BackupWords;
import benchpace.words.MissingWords;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.InstantSource;
import java.time.ZoneId;

/** The page of what is kept, for instructors. */
public final class DataPages {
    private final Backups backups;
    private final Forgetting forgetting;
    private final Erasing erasing;
    private final Boards boards;
    private final Access access;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;

    public DataPages(Backups backups, Boards boards, Forgetting forgetting, Erasing erasing, Access access,
                     Screens screens, InstantSource clock, ZoneId zone) {
        this.erasing = erasing;
        this.backups = backups;
        this.boards = boards;
        this.forgetting = forgetting;
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
        Times times = new Times(zone);
        Pages.html(ctx, screens.data(new DataPage(folder, BackupWords.size(backups.size()),
                BackupCard.of(backups.state(), backups.last(), !boards.all().isEmpty(), folder, clock.instant(), times),
                GuestsCard.of(forgetting, MissingWords.notErased(erasing.failing()), backups.kept(), clock.instant(),
                        times),
                UnreadableCard.of(boards.unreadableClasses().withNames(), forgetting.days(), times))));
    }
}
