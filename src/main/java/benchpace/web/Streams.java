package benchpace.web;

import benchpace.board.ClassBoard;
import benchpace.board.ClassView;
import benchpace.board.Mailbox;
import benchpace.files.Json;
import io.javalin.http.Context;
import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Live connections. Each screen has its own mailbox and its own writing thread, so one that sleeps or stops reading
 * holds up nobody else; the connection's write time-out ends it, and it comes back with the newest view.
 */
final class Streams implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Streams.class.getName());
    private static final long STACK_BYTES = 256 * 1024;

    private final InstantSource clock;
    private final StreamLimits limits;
    private final Set<Mailbox> open = ConcurrentHashMap.newKeySet();

    Streams(InstantSource clock, StreamLimits limits) {
        this.clock = clock;
        this.limits = limits;
    }

    /** A stream of bare {@code state} events. */
    void serve(Context ctx, ClassBoard board) {
        serve(ctx, board, view -> Map.of());
    }

    /**
     * A stream of {@code state} events with the fragments of a screen.
     *
     * @param fragments what the screen shows of a view: event name to content; only changed ones are sent
     */
    void serve(Context ctx, ClassBoard board, Function<ClassView, Map<String, String>> fragments) {
        if (open.size() >= limits.most()) {
            throw new Refused(new Problem(503, "too-many-screens", "Too many screens are open",
                    "Close some pages of this board and try again."));
        }
        ctx.contentType(EventStream.MEDIA_TYPE);
        ctx.header("Cache-Control", "no-store");
        ctx.header("X-Accel-Buffering", "no");
        ctx.future(() -> start(ctx, board, fragments));
    }

    private CompletableFuture<Void> start(Context ctx, ClassBoard board,
                                          Function<ClassView, Map<String, String>> fragments) {
        CompletableFuture<Void> ended = new CompletableFuture<>();
        Mailbox mailbox = board.subscribe();
        open.add(mailbox);
        Runnable writing = () -> {
            try (mailbox) {
                write(new EventStream(ctx.res().getOutputStream()), mailbox, fragments);
            } catch (IOException | InterruptedException e) {
                // the screen went away, or stopped reading for too long: it will come back
            } catch (RuntimeException e) {
                LOG.log(Level.ERROR, "a screen of class " + board.id() + " could not be written", e);
            } finally {
                open.remove(mailbox);
                ended.complete(null);
            }
        };
        Thread thread = new Thread(null, writing, "screen-" + board.id(), STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
        return ended;
    }

    private void write(EventStream stream, Mailbox mailbox, Function<ClassView, Map<String, String>> fragments)
            throws IOException, InterruptedException {
        Map<String, String> shown = new LinkedHashMap<>();
        while (!mailbox.isClosed()) {
            Optional<ClassView> view = mailbox.take(limits.beat());
            if (mailbox.isClosed()) {
                return;
            }
            stream.send(view.isPresent() ? changes(view.get(), fragments.apply(view.get()), shown) : beat());
        }
    }

    private String changes(ClassView view, Map<String, String> fragments, Map<String, String> shown) {
        StringBuilder events = new StringBuilder();
        fragments.forEach((name, content) -> {
            if (!content.equals(shown.put(name, content))) {
                events.append(EventStream.event(name, "", content));
            }
        });
        String state = Json.text(Json.object().put("seq", view.seq()).put("now", clock.instant().toString())
                .put("stage", view.stage().name().toLowerCase(java.util.Locale.ROOT)));
        return events.append(EventStream.event("state", Long.toString(view.seq()), state)).toString();
    }

    private String beat() {
        return EventStream.event("beat", "", Json.text(Json.object().put("now", clock.instant().toString())));
    }

    /** How many screens are connected. */
    int count() {
        return open.size();
    }

    @Override public void close() {
        open.forEach(Mailbox::close);
    }
}
