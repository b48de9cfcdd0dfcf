package benchpace.web.stream;

import benchpace.board.Mailbox;
import benchpace.board.Watched;
import benchpace.board.view.ClassView;
import benchpace.board.view.MadeView;
import benchpace.board.view.Playing;
import benchpace.files.Json;
import benchpace.web.entrance.Lines;
import benchpace.web.pairing.Access;
import benchpace.web.request.Accepted;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.stream.StreamPlaces.Place;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import jakarta.servlet.AsyncContext;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.server.Request;

/**
 * Live connections. Each screen has its own mailbox and its own writing thread, so one that sleeps or stops reading
 * holds up nobody else; the connection's write time-out ends it, and it comes back with the newest view.
 */
public final class Streams implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Streams.class.getName());
    private static final long STACK_BYTES = 256 * 1024;

    private final StreamLimits limits;
    private final Access access;
    private final StreamPlaces places;

    public Streams(StreamLimits limits, Access access) {
        this.access = access;
        this.limits = limits;
        this.places = new StreamPlaces(limits);
    }

    /** A stream of bare {@code state} events. */
    public void serve(Context ctx, Viewer viewer, Watched board) {
        serve(ctx, viewer, board, LiveScreen.NOTHING);
    }

    /**
     * A stream of {@code state} events with the fragments of a screen.
     *
     * @param viewer who was found to be asking, and may look
     */
    public void serve(Context ctx, Viewer viewer, Watched board, LiveScreen screen) {
        ctx.contentType(EventStream.MEDIA_TYPE);
        ctx.header("X-Accel-Buffering", "no");
        if (ctx.method() == HandlerType.HEAD) {
            return;
        }
        Request request = ServletContextRequest.getServletContextRequest(ctx.req());
        StreamPlaces.Asker asker = asker(ctx, viewer);
        Place place = places.enter(asker, () -> Lines.hangUp(request));
        try {
            // whoever signs the device out from now on finds its place, and ends it
            if (!access.device(ctx).equals(asker.device())) {
                throw new Refused(Problem.unauthorized());
            }
            ctx.future(() -> start(ctx, board, screen, place));
        } catch (RuntimeException | Error e) {
            places.leave(place);
            throw e;
        }
    }

    /** Who asks for a live screen: only strangers may have to give way. */
    private StreamPlaces.Asker asker(Context ctx, Viewer viewer) {
        Optional<String> device = Optional.of(viewer.device()).filter(mark -> !mark.isEmpty());
        return new StreamPlaces.Asker(device.isPresent() || access.atConsole(ctx), device, ctx.ip());
    }

    /** Ends every screen of a device that is paired no more. @param device its mark */
    public void end(String device) {
        places.end(device);
    }

    /** The marks of the paired devices that have a screen open. */
    public Set<String> devices() {
        return places.devices();
    }

    /**
     * The future that is handed back never ends: the framework would go on with a request that may be gone by then.
     * The writer itself ends the answer.
     */
    private CompletableFuture<Void> start(Context ctx, Watched board, LiveScreen screen, Place place) {
        try {
            run(ctx, board, screen, place);
        } catch (RuntimeException | Error e) {
            places.leave(place);
            throw e;
        }
        return new CompletableFuture<>();
    }

    private void run(Context ctx, Watched board, LiveScreen screen, Place place) {
        AsyncContext answer = ctx.req().getAsyncContext();
        Mailbox mailbox = place.hold(board.subscribe()); // first, as there may be none
        EventStream stream = stream(ctx, mailbox, screen.packed() && Accepted.gzip(ctx));
        Runnable writing = () -> {
            try (mailbox) {
                write(stream, board, mailbox, new ShownParts(screen));
            } catch (IOException | InterruptedException e) {
                // the screen went away, or stopped reading for too long: it will come back
            } catch (RuntimeException | StackOverflowError e) {
                LOG.log(Level.ERROR, "a screen of class " + board.id() + " could not be written", e);
            } finally {
                stream.end();
                end(answer); // first: whoever closes the board waits for it
                places.leave(place);
            }
        };
        Thread thread = new Thread(null, writing, "screen-" + board.id(), STACK_BYTES);
        thread.setDaemon(true);
        try {
            thread.start();
        } catch (Error e) { // no thread to be had
            mailbox.close();
            throw e;
        }
    }

    private static EventStream stream(Context ctx, Mailbox mailbox, boolean packed) {
        try {
            if (packed) {
                ctx.header("Content-Encoding", "gzip");
            }
            OutputStream plain = ctx.res().getOutputStream();
            return new EventStream(packed ? new PackedEvents(plain) : plain);
        } catch (IOException e) {
            mailbox.close();
            throw new UncheckedIOException(e);
        }
    }

    private static void end(AsyncContext answer) {
        try {
            answer.complete();
        } catch (IllegalStateException e) {
            // the server has ended it already, with the connection
        }
    }

    private void write(EventStream stream, Watched board, Mailbox mailbox, ShownParts shown)
            throws IOException, InterruptedException {
        while (!mailbox.isClosed()) {
            Optional<MadeView> made = mailbox.take(limits.beat());
            if (mailbox.isClosed()) {
                break;
            }
            ByteArrayOutputStream events = new ByteArrayOutputStream();
            made.ifPresent(m -> shown.add(m, events));
            if (made.filter(m -> !m.whole()).isEmpty()) {
                shown.addBeside(events);
            }
            events.writeBytes(made.map(m -> state(board, m)).orElseGet(() -> beat(board))
                    .getBytes(StandardCharsets.UTF_8));
            stream.send(events);
        }
        if (board.isDeleted()) {
            stream.send(EventStream.event("gone", "", "{}"));
        }
    }

    /** @param made whose {@code whole} says whether what is computed is of the same moment */
    private static String state(Watched board, MadeView made) {
        ClassView view = made.view();
        return EventStream.event("state", Long.toString(view.seq()), Json.text(stamped(board, Json.object()
                .put("seq", view.seq()).put("whole", made.whole()).put("clocks", board.live().clocks())
                .put("stage", view.stage().name().toLowerCase(Locale.ROOT)))));
    }

    /** With the time, and with how it goes on from there. */
    private static ObjectNode stamped(Watched board, ObjectNode event) {
        Optional<Playing> playing = board.playing();
        event.put("now", playing.map(Playing::at).orElseGet(board::now).toString());
        playing.ifPresent(p -> event.putObject("playback").put("rate", p.rate()).put("speed", p.speed())
                .put("paused", p.paused()).put("turn", p.turn()));
        return event;
    }

    private static String beat(Watched board) {
        return EventStream.event("beat", "", Json.text(stamped(board, Json.object())));
    }

    /** How many screens are connected. */
    public int count() {
        return places.count();
    }

    @Override public void close() {
        places.endAll();
    }
}
