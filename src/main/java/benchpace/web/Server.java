package benchpace.web;

import benchpace.board.Boards;
import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.plan.Plan;
import benchpace.store.StoreException;
import benchpace.web.screen.Message;
import benchpace.web.screen.Screens;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.staticfiles.Location;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The board on the network. */
public final class Server implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Server.class.getName());
    /** A reader that takes nothing for so long is dropped; it comes back with the newest view. */
    private static final long STALLED_MILLIS = 20_000;
    private static final long STOP_MILLIS = 150;

    private Javalin javalin;
    private final Streams streams;

    /**
     * Starts listening.
     *
     * @param host      the address to listen on
     * @param port      0 takes any free one
     * @param hostNames names besides plain addresses under which this machine is reached
     * @param reachable makes the address that phones on the same network can reach from the port
     * @throws StartFailure in one sentence if it cannot
     */
    public Server(String host, int port, Set<String> hostNames, IntFunction<String> reachable, Boards boards,
                  Map<String, Plan> plans, Access access, InstantSource clock, ZoneId zone) {
        streams = new Streams(clock);
        Screens screens = new Screens();
        Guard guard = new Guard(Addresses.names(hostNames));
        javalin = Javalin.create(config -> {
            settings(config);
            RoutesConfig routes = config.routes;
            routes.before(guard::check);
            routes.get("/health", ctx -> Bodies.send(ctx, 200, Json.object().put("status", "ok")
                    .put("classes", boards.all().size()).put("screens", streams.count())));
            routes.post("/api/pair", access::pair);
            routes.post("/api/unpair", access::unpair);
            routes.post("/api/instructor-keys", ctx -> {
                access.instructor(ctx);
                Bodies.send(ctx, 201, Json.object().put("key", access.newInstructorKey()));
            });
            new ClassesApi(boards, plans, access, streams, clock).routes(routes);
            new Pages(boards, plans, access, streams, screens, zone, () -> reachable.apply(port())).routes(routes);
            boards.lessons().ifPresent(l -> new CurePages(plans, l, access, screens, zone).routes(routes));
            Webjars.routes(routes);
            failures(routes, screens);
        });
        try {
            javalin.start(host, port);
        } catch (RuntimeException e) {
            throw StartFailure.of(host, port, e);
        }
    }

    private static void settings(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = Bodies.LARGEST + 1;
        config.http.asyncTimeout = 0;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        QueuedThreadPool threads = new QueuedThreadPool(60, 4, 30_000);
        threads.setStopTimeout(STOP_MILLIS);
        config.jetty.threadPool = threads;
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(0);
            server.setStopAtShutdown(false);
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setRequestHeaderSize(16 * 1024);
        });
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/static";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "no-cache", "X-Content-Type-Options", "nosniff",
                    "Content-Security-Policy", Guard.POLICY);
        });
    }

    private static void failures(RoutesConfig routes, Screens screens) {
        routes.exception(Refused.class, (e, ctx) -> answer(ctx, e.problem(), screens));
        routes.exception(BadField.class, (e, ctx) -> answer(ctx,
                Problem.unprocessable(sentence(e.getMessage())), screens));
        routes.exception(HttpResponseException.class, (e, ctx) -> answer(ctx, e.getStatus() == 413
                ? Bodies.tooLarge().problem()
                : new Problem(e.getStatus(), "refused", "The request is refused", sentence(e.getMessage())), screens));
        routes.exception(StoreException.class, (e, ctx) -> {
            LOG.log(Level.ERROR, "the store refused", e);
            answer(ctx, new Problem(503, "not-written", "It could not be written down", e.getMessage()), screens);
        });
        routes.exception(Exception.class, (e, ctx) -> {
            LOG.log(Level.ERROR, ctx.method() + " " + ctx.path() + " failed", e);
            answer(ctx, new Problem(500, "fault", "The board made a mistake",
                    "The board made a mistake and has noted it. Nothing was changed; try again."), screens);
        });
    }

    private static String sentence(String text) {
        return text == null || text.isBlank() ? "The request is refused." : text;
    }

    /** JSON for programs; a page for people. */
    private static void answer(Context ctx, Problem problem, Screens screens) {
        String accept = ctx.header("Accept");
        boolean person = accept != null && accept.contains("text/html") && !ctx.path().startsWith("/api/");
        if (person) {
            ctx.status(problem.status()).contentType("text/html; charset=utf-8")
                    .result(screens.message(new Message(problem.title(), problem.detail(), "/", "To the start page")));
        } else {
            problem.send(ctx);
        }
    }

    public int port() {
        return javalin.port();
    }

    @Override public void close() {
        streams.close();
        javalin.stop();
    }
}
