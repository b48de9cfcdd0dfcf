package benchpace.web.classes;

import benchpace.board.ClassBoard;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.between.BetweenPage;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.stream.LiveScreen;
import benchpace.web.stream.Streams;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Map;
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

    private final ShownTold shown;
    private final Pages pages;
    private final Access access;
    private final Streams streams;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;

    public StayingAddresses(ShownTold shown, Pages pages, Access access, Streams streams, Screens screens,
                            InstantSource clock, ZoneId zone) {
        this.shown = shown;
        this.pages = pages;
        this.access = access;
        this.streams = streams;
        this.screens = screens;
        this.clock = clock;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, WALL, ctx -> page(ctx, ScreenKind.WALL, WALL));
        Reads.route(routes, HELPER, ctx -> page(ctx, ScreenKind.HELPER, HELPER));
        Reads.route(routes, TABLE, ctx -> page(ctx, ScreenKind.INSTRUCTOR, TABLE));
        Reads.route(routes, "/api/shown", this::tell);
        Reads.route(routes, "/api/shown/stream", this::tellOn);
    }

    private void page(Context ctx, ScreenKind kind, String address) {
        ShownClass.Choice choice = shown.choice();
        if (!pages.opens(ctx, kind)) {
            return;
        }
        Viewer viewer = access.viewer(ctx);
        Following following = new Following(address, shown.mark(choice));
        boolean farewell = kind == ScreenKind.WALL && choice.justOver().isPresent();
        Pages.html(ctx, choice.board().isPresent() && !farewell
                ? screens.page(kind, choice.board().get().view(), viewer, following)
                : screens.between(BetweenPage.of(kind, viewer, following, told(choice.board().or(choice::next)),
                        told(choice.justOver()), clock.instant(), zone)));
    }

    private static Optional<BetweenPage.Told> told(Optional<ClassBoard> board) {
        return board.map(ClassBoard::view).map(view -> new BetweenPage.Told(view.name(), view.startsAt(),
                view.cure().poured() > 0));
    }

    /** GET: which class is meant now, and which run; no more than the start page tells everybody. */
    private void tell(Context ctx) {
        Bodies.send(ctx, 200, shown.json());
    }

    /** The same for a page between two classes; it hears of another with the next beat. */
    private void tellOn(Context ctx) {
        streams.serve(ctx, access.viewer(ctx), new NoClass(clock), new LiveScreen() {
            @Override public Map<String, String> beside() {
                return shown.part();
            }
        });
    }
}
