package benchpace.web.classes;

import benchpace.board.ClassBoard;
import benchpace.files.Json;
import benchpace.files.StudioJson;
import benchpace.live.LiveClass;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.between.BetweenPage;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Optional;

/**
 * Addresses that stay from one class to the next, so that a television or a phone is set up once: they show the class
 * of {@link ShownClass}, with the rights of that class's own pages, and their pages ask now and then whether another
 * class is the one to show.
 */
public final class StayingAddresses {
    static final String WALL = "/wall";
    static final String HELPER = "/helper";
    static final String TABLE = "/table";

    private final ShownClass shown;
    private final Pages pages;
    private final Access access;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;

    public StayingAddresses(ShownClass shown, Pages pages, Access access, Screens screens, InstantSource clock,
                            ZoneId zone) {
        this.shown = shown;
        this.pages = pages;
        this.access = access;
        this.screens = screens;
        this.clock = clock;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, WALL, ctx -> page(ctx, ScreenKind.WALL, WALL));
        Reads.route(routes, HELPER, ctx -> page(ctx, ScreenKind.HELPER, HELPER));
        Reads.route(routes, TABLE, ctx -> page(ctx, ScreenKind.INSTRUCTOR, TABLE));
        Reads.route(routes, "/api/shown", this::tell);
    }

    private void page(Context ctx, ScreenKind kind, String address) {
        ShownClass.Choice choice = shown.now();
        if (!pages.opens(ctx, kind)) {
            return;
        }
        Viewer viewer = access.viewer(ctx);
        Following following = new Following(address, mark(choice));
        Pages.html(ctx, choice.board().isPresent()
                ? screens.page(kind, choice.board().get().view(), viewer, following)
                : screens.between(BetweenPage.of(kind, viewer, following, told(choice.next()), told(choice.justOver()),
                        clock.instant(), zone)));
    }

    /** Names the class and whose room it is in, so that a wall shows either anew once it is another. */
    private String mark(ShownClass.Choice choice) {
        return choice.mark() + " " + StudioJson.tag(choice.board()
                .map(board -> screens.headed(board.id(), board.live().plan().place()))
                .orElseGet(() -> screens.studioOf("")));
    }

    private static Optional<BetweenPage.Told> told(Optional<ClassBoard> board) {
        return board.map(ClassBoard::live).map(live -> new BetweenPage.Told(live.name(), live.startsAt()));
    }

    /** GET: which class is meant now, and which run; no more than the start page tells everybody. */
    private void tell(Context ctx) {
        ShownClass.Choice choice = shown.now();
        ObjectNode told = Json.object().put("mark", mark(choice))
                .put("studio", StudioJson.tag(screens.studioOf("")));
        choice.board().ifPresent(b -> told.set("class", named(b)));
        ArrayNode running = told.putArray("running");
        choice.running().forEach(b -> running.add(named(b)));
        Bodies.send(ctx, 200, told);
    }

    private static ObjectNode named(ClassBoard board) {
        LiveClass live = board.live();
        return Json.object().put("id", board.id()).put("name", live.name()).put("startsAt", live.startsAt().toString());
    }
}
