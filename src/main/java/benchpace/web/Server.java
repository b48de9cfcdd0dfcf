package benchpace.web;

import benchpace.board.Backups;
import benchpace.board.Boards;
import benchpace.board.ClassDeleted;
import benchpace.board.Erasing;
import benchpace.board.Forgetting;
import benchpace.board.HistoryBoard;
import benchpace.board.LeavingEarly;
import benchpace.board.PrepBoard;
import benchpace.board.ProblemReports;
import benchpace.board.ShelfBoard;
import benchpace.board.StudioBoard;
import benchpace.board.plans.PlanBook;
import benchpace.board.playback.Playbacks;
import benchpace.board.time.ImpossibleClock;
import benchpace.files.BadField;
import benchpace.store.CannotBeKept;
import benchpace.store.Settings;
import benchpace.store.sqlite.StoreException;
import benchpace.web.classes.ClassesApi;
import benchpace.web.classes.ClockApi;
import benchpace.web.classes.Pages;
import benchpace.web.classes.ShownClass;
import benchpace.web.classes.ShownTold;
import benchpace.web.classes.StayingAddresses;
import benchpace.web.cure.CurePages;
import benchpace.web.data.DataPages;
import benchpace.web.data.ForgettingApi;
import benchpace.web.data.ProblemPages;
import benchpace.web.devices.DevicesApi;
import benchpace.web.entrance.Entrance;
import benchpace.web.entrance.EntranceConnector;
import benchpace.web.entrance.EntranceLimits;
import benchpace.web.entrance.Lines;
import benchpace.web.entrance.TlsKeys;
import benchpace.web.guest.GuestCodes;
import benchpace.web.guest.GuestPages;
import benchpace.web.history.HistoryPages;
import benchpace.web.learned.LearnedPages;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Pairing;
import benchpace.web.plans.ChosenUnits;
import benchpace.web.plans.EditAnswers;
import benchpace.web.plans.EditPages;
import benchpace.web.plans.PlansApi;
import benchpace.web.plans.PlansPages;
import benchpace.web.playback.PlaybacksApi;
import benchpace.web.prep.PrepApi;
import benchpace.web.prep.PrepPages;
import benchpace.web.prep.TicksApi;
import benchpace.web.report.ReportFiles;
import benchpace.web.report.ReportPages;
import benchpace.web.report.WhatIfApi;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Guard;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Message;
import benchpace.web.setup.GuestsApi;
import benchpace.web.setup.SetupApi;
import benchpace.web.setup.SetupPages;
import benchpace.web.shelf.LeaveApi;
import benchpace.web.shelf.ShelfApi;
import benchpace.web.shelf.ShelfPages;
import benchpace.web.stream.StreamLimits;
import benchpace.web.stream.Streams;
import benchpace.web.studio.StudioApi;
import benchpace.web.studio.StudioPages;
import benchpace.web.studio.StudioSheet;
import benchpace.web.style.StylePages;
import benchpace.words.ClockWords;
import benchpace.words.MissingWords;
import benchpace.words.PlanWords;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.http.NotFoundResponse;
import io.javalin.router.Endpoint;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The board on the network. */
public final class Server implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Server.class.getName());
    private static final long STOP_MILLIS = 150;
    private static final long LONGEST_STOP_MILLIS = 5000;

    private Javalin javalin;
    private final Streams streams;
    private final Access access;
    private final Backups backups;
    private volatile Supplier<Optional<String>> localName = Optional::empty;

    /**
     * Starts listening.
     *
     * @param host      the address to listen on
     * @param port      0 takes any free one
     * @param hostNames names besides plain addresses under which this machine is reached
     * @param reachable makes the address that phones on the same network can reach from the port
     * @param keys      if there are some, the board is reached over TLS only
     * @throws StartFailure in one sentence if it cannot
     */
    public Server(String host, int port, Set<String> hostNames, IntFunction<String> reachable, Boards boards,
                  Playbacks playbacks, ShelfBoard shelf, PrepBoard prep, HistoryBoard history, PlanBook plans,
                  Settings settings, Access access, GuestCodes codes, Erasing erasing, Forgetting forgetting,
                  Backups backups, ProblemReports problems, InstantSource clock, ZoneId zone, Optional<TlsKeys> keys) {
        this(host, port, hostNames, reachable, boards, playbacks, shelf, prep, history, plans, settings, access,
                codes, erasing, forgetting, backups, problems, clock, zone, StreamLimits.USUAL, EntranceLimits.USUAL,
                keys);
    }

    Server(String host, int port, Set<String> hostNames, IntFunction<String> reachable, Boards boards,
            Playbacks playbacks, ShelfBoard shelf, PrepBoard prep, HistoryBoard history, PlanBook plans,
            Settings settings, Access access, GuestCodes codes, Erasing erasing, Forgetting forgetting,
            Backups backups, ProblemReports problems, InstantSource clock, ZoneId zone, StreamLimits limits,
            EntranceLimits entrance, Optional<TlsKeys> keys) {
        this.access = access;
        this.backups = backups;
        streams = new Streams(limits, access);
        StudioBoard studio = new StudioBoard(settings);
        Screens screens = new Screens(id -> (Playbacks.isOne(id) ? playbacks.find(id).map(studio::of)
                : boards.find(id).map(studio::of)).orElseGet(studio::now));
        Guard guard = new Guard(Addresses.names(hostNames), () -> localName.get());
        javalin = Javalin.create(config -> {
            settings(config, limits);
            entrance(config, entrance, access, keys, host, port);
            RoutesConfig routes = config.routes;
            routes.before(guard::check);
            List<Supplier<? extends Collection<String>>> degraded = List.of(
                    () -> MissingWords.told(boards.unreadable(), boards.missing()), shelf::degraded,
                    () -> plans.troubles().stream().map(PlanWords::of).toList(), studio::degraded,
                    () -> MissingWords.notErased(erasing.failing()));
            new Health(boards, streams::count, degraded).routes(routes);
            new ProblemPages(problems, () -> degraded.stream().<String>flatMap(part -> part.get().stream()).toList(),
                    access, screens, clock, zone).routes(routes);
            Pairing pairing = new Pairing(access, streams::end);
            pairing.routes(routes);
            new DevicesApi(access, streams, screens, zone, () -> reachable.apply(port())).routes(routes);
            new DataPages(backups, boards, forgetting, erasing, access, screens, clock, zone).routes(routes);
            new ForgettingApi(boards, forgetting, codes, access).routes(routes);
            new PlansApi(plans, boards, access, clock, zone).routes(routes);
            new PlansPages(plans, boards, access, screens, clock, zone).routes(routes);
            new ClassesApi(boards, playbacks, access, streams).routes(routes);
            new SetupApi(boards, plans, shelf, studio, access, zone).routes(routes);
            new SetupPages(boards, plans, access, screens, zone).routes(routes);
            new GuestsApi(boards, access).routes(routes);
            new ClockApi(boards, access).routes(routes);
            ShelfApi shelves = new ShelfApi(shelf, boards, access, zone);
            shelves.routes(routes);
            new LeaveApi(boards, new LeavingEarly(shelf), shelf, shelves, access, zone).routes(routes);
            new ShelfPages(shelf, shelves, boards, access, screens, zone).routes(routes);
            ShownTold shown = new ShownTold(new ShownClass(boards, clock, zone), screens);
            Pages pages = new Pages(boards, playbacks, prep, plans, access, pairing, streams, shown, screens, clock,
                    zone, () -> reachable.apply(port()),
                    () -> localName.get().map(n -> scheme(keys) + n + ":" + port() + "/"));
            pages.routes(routes);
            new StayingAddresses(shown, pages, access, streams, screens, clock, zone).routes(routes);
            new WhatIfApi(boards, plans, access, screens).routes(routes);
            new ReportPages(boards, shelf, forgetting, access, screens, zone).routes(routes);
            new PlaybacksApi(boards, playbacks, access).routes(routes);
            new ReportFiles(boards, shelf, access).routes(routes);
            new HistoryPages(history, access, screens, zone).routes(routes);
            new TicksApi(boards, prep, access).routes(routes);
            new PrepApi(boards, prep, plans, studio, access).routes(routes);
            new PrepPages(boards, prep, plans, access, streams, screens, clock, zone).routes(routes);
            boards.lessons().ifPresent(l -> new CurePages(plans, l, access, screens, zone).routes(routes));
            new LearnedPages(boards, plans, access, screens, zone).routes(routes);
            ChosenUnits units = new ChosenUnits(settings);
            new EditPages(plans, units, access, screens, zone).routes(routes);
            new EditAnswers(boards.lessons(), units, prep, access, screens).routes(routes);
            new StudioSheet(studio).routes(routes);
            new StudioApi(studio, access).routes(routes);
            new StudioPages(studio, access, screens).routes(routes);
            new GuestPages(boards, codes, access, screens, clock, () -> reachable.apply(port())).routes(routes);
            new StylePages(access, screens, zone).routes(routes);
            Webjars.routes(routes);
            new Worker().routes(routes);
            Films.routes(routes);
            new ProgramFiles().routes(routes);
            routes.after(Packed::answer);
            failures(routes, screens, zone);
        });
        try {
            javalin.start(host, port);
        } catch (RuntimeException e) {
            throw StartFailure.of(host, port, e);
        }
    }

    private static void settings(JavalinConfig config, StreamLimits limits) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.http.asyncTimeout = 0;
        config.http.compressionStrategy = CompressionStrategy.NONE; // Packed does it, and Streams to a wall's
        config.jetty.modifyServer(server -> {
            // no waiting for idle browsers to hang up: streams are ended by us, and a cut tap is sent again
            server.setStopTimeout(0);
            server.setStopAtShutdown(false);
            server.setErrorHandler(new UnreadableRequests());
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setIdleTimeout(limits.stalled().toMillis());
            http.setRequestHeaderSize(16 * 1024);
        });
    }

    /** Jetty's own threads only move bytes: what was asked runs in the lanes of the entrance. */
    private static void entrance(JavalinConfig config, EntranceLimits limits, Access access, Optional<TlsKeys> keys,
                                 String host, int port) {
        QueuedThreadPool threads = new QueuedThreadPool(16, 4, 30_000);
        threads.setStopTimeout(STOP_MILLIS);
        config.jetty.threadPool = threads;
        Lines lines = new Lines(limits);
        Entrance entrance = new Entrance(limits, lines, access::shown);
        config.jetty.modifyServer(server -> server.setHandler(keys.isPresent() ? entrance.onlyEncrypted() : entrance));
        config.jetty.addConnector((server, http) -> {
            ServerConnector connector = new EntranceConnector(server, lines, http, keys);
            connector.setHost(host);
            connector.setPort(port);
            return connector;
        });
    }

    private static void failures(RoutesConfig routes, Screens screens, ZoneId zone) {
        routes.exception(Refused.class, (e, ctx) -> answer(ctx, e.problem(), screens));
        routes.exception(BadField.class, (e, ctx) -> answer(ctx,
                Problem.unprocessable(sentence(e.getMessage())), screens));
        routes.exception(MethodNotAllowedResponse.class, (e, ctx) -> {
            ctx.header("Allow", e.getDetails().getOrDefault("availableMethods", "GET"));
            answer(ctx, Problem.wrongMethod(ctx.method() + " is not for this address."), screens);
        });
        routes.exception(NotFoundResponse.class, (e, ctx) -> answer(ctx, Problem.notFound(
                "There is nothing at this address. The start page leads on."), screens));
        routes.exception(HttpResponseException.class, (e, ctx) -> answer(ctx, new Problem(e.getStatus(), "refused",
                "The request is refused", "The request cannot be understood."), screens));
        routes.exception(HttpException.RuntimeException.class, (e, ctx) -> answer(ctx, e.getCode() < 500
                ? new Problem(e.getCode(), "refused", "The request is refused", "The request cannot be understood.")
                : Problem.badRequest("The request did not arrive whole."), screens));
        routes.exception(ClassDeleted.class, (e, ctx) -> answer(ctx, AskedClass.deleted(), screens));
        routes.exception(CannotBeKept.class, (e, ctx) -> answer(ctx,
                new Problem(422, "cannot-be-kept", "It cannot be kept", e.getMessage()), screens));
        routes.exception(ImpossibleClock.class, (e, ctx) -> answer(ctx, new Problem(503, "impossible-clock",
                "The computer's clock cannot be right", ClockWords.of(e, zone)), screens));
        routes.exception(StoreException.class, (e, ctx) -> {
            LOG.log(Level.ERROR, "the store refused", e);
            answer(ctx, new Problem(503, "not-written", "It could not be written down", e.getMessage()), screens);
        });
        routes.exception(Exception.class, (e, ctx) -> {
            LOG.log(Level.ERROR, ctx.method() + " " + address(ctx) + " failed", e);
            answer(ctx, new Problem(500, "fault", "The board made a mistake",
                    "The board made a mistake and has noted it. Nothing was changed; try again."), screens);
        });
    }

    /** How addresses of the board begin. */
    public static String scheme(Optional<TlsKeys> keys) {
        return keys.isPresent() ? "https://" : "http://";
    }

    /** As the routes name it: what stands in its place may be a guest's code. */
    private static String address(Context ctx) {
        Endpoint matched = ctx.endpoints().matchedHttpEndpoint();
        return matched == null ? "an address that is not served" : matched.path;
    }

    private static String sentence(String text) {
        return text == null || text.isBlank() ? "The request is refused." : text;
    }

    /** JSON for programs; a page for people. */
    private static void answer(Context ctx, Problem problem, Screens screens) {
        String accept = ctx.header("Accept");
        if (problem.status() == 401) {
            ctx.header("WWW-Authenticate", "Bearer");
        }
        boolean person = accept != null && accept.contains("text/html") && !ctx.path().startsWith("/api/");
        if (person) {
            ctx.status(problem.status()).contentType("text/html; charset=utf-8")
                    .result(screens.message(ctx.path().startsWith("/g/") ? GuestPages.message(ctx, problem)
                            : new Message(problem.title(), problem.detail(), "/", "To the start page")));
        } else {
            problem.send(ctx);
        }
    }

    /** @param name a name on the local network, as soon and as long as the board has one; also accepted as its host */
    public void alsoKnownAs(Supplier<Optional<String>> name) {
        localName = name;
    }

    /** Every address that is served but for files, so that each can be held to the rules for all. */
    public List<Endpoint> endpoints() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream().map(handler -> handler.endpoint).toList();
    }

    public int port() {
        return javalin.port();
    }

    /**
     * Ends within some seconds whatever connections do: Jetty 12.1 may wait without end for an answer that is sent in
     * the very moment its connection is closed (HttpConnection.SendCallback.cancel).
     */
    @Override public void close() {
        streams.close();
        Thread stopping = new Thread(javalin::stop, "stopping");
        stopping.setDaemon(true);
        stopping.start();
        try {
            stopping.join(LONGEST_STOP_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (stopping.isAlive()) {
            LOG.log(Level.WARNING, "some connections did not end in time and are left to end with the program");
        }
        access.close();
        backups.close();
    }
}
