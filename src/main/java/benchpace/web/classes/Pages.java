package benchpace.web.classes;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.PrepBoard;
import benchpace.board.Watched;
import benchpace.board.attempt.Faults;
import benchpace.board.plans.PlanBook;
import benchpace.board.playback.Playbacks;
import benchpace.board.prep.Occasion;
import benchpace.board.view.ClassView;
import benchpace.files.roster.Demo;
import benchpace.live.LiveClass;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Pairing;
import benchpace.web.pairing.Throttle;
import benchpace.web.playback.Bands;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Problem;
import benchpace.web.request.QrCode;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.instructor.GuessLine;
import benchpace.web.screen.instructor.HomeLine;
import benchpace.web.screen.prep.NextLine;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.ClockLine;
import benchpace.web.screen.start.StartView;
import benchpace.web.stream.LiveScreen;
import benchpace.web.stream.Streams;
import benchpace.words.MissingWords;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The pages people look at, and their live streams. */
public final class Pages {
    private static final Logger LOG = System.getLogger(Pages.class.getName());

    private final Boards boards;
    private final Playbacks playbacks;
    private final PrepBoard prep;
    private final PlanBook plans;
    private final Access access;
    private final Pairing pairing;
    private final Streams streams;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;
    private final ShownTold shown;
    private final Supplier<String> reachable;
    private final Supplier<Optional<String>> byName;
    private final Bands bands;
    private final Faults faults = new Faults();

    /**
     * @param reachable the address of the board that phones on the same network can reach
     * @param byName    the same by its name, where the network knows that
     */
    public Pages(Boards boards, Playbacks playbacks, PrepBoard prep, PlanBook plans, Access access, Pairing pairing,
                 Streams streams, ShownTold shown, Screens screens, InstantSource clock, ZoneId zone,
                 Supplier<String> reachable, Supplier<Optional<String>> byName) {
        this.boards = boards;
        this.playbacks = playbacks;
        this.bands = new Bands(reachable, zone);
        this.prep = prep;
        this.plans = plans;
        this.access = access;
        this.pairing = pairing;
        this.streams = streams;
        this.shown = shown;
        this.screens = screens;
        this.clock = clock;
        this.zone = zone;
        this.reachable = reachable;
        this.byName = byName;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/", ctx -> start(ctx, 200, ""));
        for (ScreenKind kind : ScreenKind.values()) {
            String address = "/classes/{id}/" + kind.token();
            Reads.route(routes, address, ctx -> page(ctx, kind));
            Reads.route(routes, address + "/stream", ctx -> stream(ctx, kind));
        }
        Reads.route(routes, "/classes/{id}",
                ctx -> ctx.redirect("/classes/" + watched(ctx).id() + "/" + home(ctx).token()));
        Reads.route(routes, "/classes/{id}/seats/{seat}/sheet", this::sheet);
    }

    private ScreenKind home(Context ctx) {
        return switch (access.viewer(ctx).role()) {
            case INSTRUCTOR -> ScreenKind.INSTRUCTOR;
            case HELPER -> ScreenKind.HELPER;
            case WALL, GUEST -> ScreenKind.WALL;
        };
    }

    private Watched watched(Context ctx) {
        return AskedClass.watched(ctx, boards, playbacks);
    }

    private void page(Context ctx, ScreenKind kind) {
        Watched watched = watched(ctx);
        if (opens(ctx, kind)) {
            Viewer viewer = access.viewer(ctx);
            html(ctx, screens.page(kind, watched.view(), viewer, bands.of(watched, kind, viewer)));
        }
    }

    /**
     * Whether the device may see a screen; one that is not paired is asked to, and then comes back to where it was.
     *
     * @throws Refused if it is paired for less
     */
    boolean opens(Context ctx, ScreenKind kind) {
        Viewer viewer = access.viewer(ctx);
        if (!viewer.role().staff() && kind != ScreenKind.WALL) {
            start(ctx, 401, "Pair this device first, then the page opens.");
            return false;
        }
        mayLook(viewer, kind);
        return true;
    }

    private static void mayLook(Viewer viewer, ScreenKind kind) {
        if (kind == ScreenKind.WALL) {
            return;
        }
        if (!viewer.role().staff()) {
            throw new Refused(Problem.unauthorized());
        }
        if (kind == ScreenKind.INSTRUCTOR && viewer.role() != Role.INSTRUCTOR) {
            throw new Refused(Problem.forbidden("This device is paired as a helper's. The instructor's page needs the "
                    + "instructor's PIN or link."));
        }
    }

    private void stream(Context ctx, ScreenKind kind) {
        Watched watched = watched(ctx);
        Viewer viewer = access.viewer(ctx);
        mayLook(viewer, kind);
        streams.serve(ctx, viewer, watched, new ClassScreen(kind, viewer, watched));
    }

    /** A page of a class as its stream goes on with it. */
    private final class ClassScreen implements LiveScreen {
        private final ScreenKind kind;
        private final Viewer viewer;
        private final Watched watched;

        ClassScreen(ScreenKind kind, Viewer viewer, Watched watched) {
            this.kind = kind;
            this.viewer = viewer;
            this.watched = watched;
        }

        @Override public Object key(ClassView view) {
            return Map.entry(kind, viewer.amongMany(view));
        }

        @Override public Map<String, String> shared(ClassView view, boolean all) {
            return screens.live().shared(kind, view, viewer, all).html();
        }

        @Override public Map<String, String> own(ClassView view) {
            return screens.live().own(kind, view, viewer).html();
        }

        @Override public boolean packed() {
            return kind == ScreenKind.WALL;
        }

        @Override public Map<String, String> beside() {
            return watched instanceof ClassBoard board ? Pages.this.beside(kind, board) : Map.of();
        }
    }

    /** What a screen hears of the board: which class is meant now, and what the instructor should know besides. */
    private Map<String, String> beside(ScreenKind kind, ClassBoard board) {
        Map<String, String> beside = new LinkedHashMap<>(kind == ScreenKind.WAIT ? Map.of() : shown.part());
        if (kind == ScreenKind.INSTRUCTOR) {
            beside.put("guesses", screens.guesses(guesses()));
            beside.put("clocks", screens.clocks(ClockLine.of(boards.clocks(), board, new Times(zone))));
        }
        return beside;
    }

    private void sheet(Context ctx) {
        Viewer viewer = access.paired(ctx);
        Watched watched = watched(ctx);
        ClassView view = watched.view();
        String seat = ctx.pathParam("seat");
        if (!seat.matches("\\d{1,3}") || view.seats().stream().noneMatch(s -> s.seat() == Integer.parseInt(seat))) {
            throw new Refused(Problem.notFound("There is no seat " + seat + " in this class."));
        }
        int number = Integer.parseInt(seat);
        html(ctx, screens.sheet(view, number, viewer, watched.cutAway(number)));
    }

    private void start(Context ctx, int status, String notice) {
        Viewer viewer = access.viewer(ctx);
        boolean instructor = viewer.role() == Role.INSTRUCTOR;
        List<StartView.ClassRow> classes = boards.all().stream()
                .map(board -> instructor ? withClock(withHome(row(board), board), board) : row(board))
                .sorted(StartView.order())
                .toList();
        List<StartView.PlanChoice> choices = plans.all().stream()
                .map(p -> new StartView.PlanChoice(p.id(), p.plan().name(), p.plan().usualSeats()))
                .toList();
        boolean newcomer = boards.all().stream().map(ClassBoard::live).allMatch(Demo::is);
        String address = reachable.get();
        String helpers = address + "helper#helper=" + access.keys().helper();
        Optional<Role> role = Optional.of(viewer.role()).filter(Role::staff);
        ctx.status(status);
        html(ctx, screens.start(new StartView(role, viewer.initials(), classes, instructor ? choices : List.of(),
                new StartView.Link(address, QrCode.modules(address)), byName.get(),
                instructor ? Optional.of(new StartView.Joining(new StartView.Link(helpers, QrCode.modules(helpers)),
                        access.pins().helper())) : Optional.empty(),
                notice.isEmpty() && instructor ? MissingWords.leftOut(boards.unreadable().size()) : notice,
                role.isPresent() ? guesses().words() : "",
                instructor ? ClockLine.of(boards.clocks(), new Times(zone)) : ClockLine.NOTHING,
                role.isPresent() && !newcomer ? next(classes) : Optional.empty(), clock.instant().atZone(zone),
                newcomer)));
    }

    /** The nearest class to come, and what is next for it. */
    private Optional<StartView.NextClass> next(List<StartView.ClassRow> classes) {
        return classes.stream().filter(StartView.ClassRow::toCome).findFirst()
                .flatMap(row -> boards.find(row.id()).map(board -> new StartView.NextClass(row.id(), row.name(),
                        row.when(), nextLine(board))));
    }

    private NextLine nextLine(ClassBoard board) {
        try {
            LiveClass live = board.live();
            return NextLine.of(prep.sheet(Occasion.of(live)), prep.ticked(board.id()),
                    prep.odds().known(prep.setting(board)), live.startsAt(), board.now(), new Times(zone));
        } catch (RuntimeException | StackOverflowError e) { // the page goes on, and so does the class
            note(board, e);
            return NextLine.NOTHING;
        }
    }

    private GuessLine guesses() {
        Throttle.Guesses guesses = pairing.guesses();
        return GuessLine.of(guesses.wrong(), guesses.addresses(), guesses.shutUntil(), new Times(zone));
    }

    private StartView.ClassRow withClock(StartView.ClassRow row, ClassBoard board) {
        return row.withClocks(ClockLine.sentence(boards.clocks(), board, new Times(zone)));
    }

    private StartView.ClassRow withHome(StartView.ClassRow row, ClassBoard board) {
        if (!row.isNear()) {
            return row;
        }
        try {
            return board.viewIfReady()
                    .map(view -> row.withHome(HomeLine.of(view, new Times(view.zone())).sentence() + "."))
                    .orElse(row);
        } catch (RuntimeException | StackOverflowError e) { // one class that cannot be foretold takes no other along
            note(board, e);
            return row;
        }
    }

    private StartView.ClassRow row(ClassBoard board) {
        LiveClass live = board.live();
        Instant now = clock.instant();
        return new StartView.ClassRow(board.id(), live.name(), live.plan().place(), live.startsAt(), now, zone,
                status(board, now));
    }

    private String status(ClassBoard board, Instant now) {
        try {
            return ShownClass.leftOpen(board, now) ? StartView.LEFT_OPEN : switch (board.stage()) {
                case BEFORE -> StartView.NOT_BEGUN;
                case RUNNING -> "running";
                case SETTING -> "setting";
                case FINISHING -> "finishing";
                case CLOSED -> StartView.CLOSED;
            };
        } catch (RuntimeException | StackOverflowError e) { // nor one that cannot even be counted
            note(board, e);
            return StartView.UNTOLD;
        }
    }

    private void note(ClassBoard board, Throwable fault) {
        if (faults.isNew("list " + board.id(), fault)) {
            LOG.log(Level.WARNING, "class " + board.id() + " cannot be listed as it is", fault);
        }
    }

    public static void html(Context ctx, String page) {
        ctx.contentType("text/html; charset=utf-8").result(page);
    }
}
