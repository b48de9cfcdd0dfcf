package benchpace.web.entrance;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.thread.Invocable;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Takes the body of one request as it comes, holding no thread meanwhile; of a refused one, what is still on its way.
 */
final class WholeBody implements Invocable.Task {
    /** How much of a refused body is passed over: closing over unread bytes may swallow the refusal (RFC 9112, 9.6). */
    private static final int MOST_PASSED_OVER = 1024 * 1024;
    /** How long for one that tells that it is longer. */
    private static final long BRIEFLY_MILLIS = 1000;

    private final Request request;
    private final EntranceLimits limits;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private Taking taking;
    private Reading reading = Reading.NOT;

    /** What becomes of it; exactly one of these is called, once. */
    interface Then {
        void whole(byte[] body);

        /** @param rest what may still come */
        void refused(int status, WholeBody rest);

        void broken(Throwable why);
    }

    /** Of a request only one demand for more may be out at a time, and only one may read. */
    private enum Reading {
        NOT, DEMANDED, UNDER_WAY
    }

    /** Taking a body in, or passing it over. */
    private final class Taking {
        private final int most;
        private final boolean kept;
        private final Then then;
        private final long millis;
        private Optional<Scheduler.Task> deadline = Optional.empty();
        private int length;
        private boolean ended;

        Taking(int most, boolean kept, long millis, Then then) {
            this.most = most;
            this.kept = kept;
            this.millis = millis;
            this.then = then;
        }

        /** Counted from when it has to be waited for: most bodies come with their header. */
        void waits() {
            if (deadline.isEmpty() && !ended) {
                deadline = Optional.of(request.getComponents().getScheduler().schedule(
                        () -> end(() -> then.refused(HttpStatus.REQUEST_TIMEOUT_408, WholeBody.this)),
                        millis, TimeUnit.MILLISECONDS));
            }
        }

        void take(Content.Chunk chunk) {
            if (Content.Chunk.isFailure(chunk)) {
                Throwable why = chunk.getFailure();
                end(why instanceof TimeoutException
                        ? () -> then.refused(HttpStatus.REQUEST_TIMEOUT_408, WholeBody.this) : () -> then.broken(why));
                return;
            }
            length += chunk.remaining();
            if (kept && length <= most) {
                bytes.writeBytes(BufferUtil.toArray(chunk.getByteBuffer()));
            }
            chunk.release();
            if (length > most) {
                end(() -> then.refused(HttpStatus.PAYLOAD_TOO_LARGE_413, WholeBody.this));
            } else if (chunk.isLast()) {
                end(() -> then.whole(bytes.toByteArray()));
            }
        }

        private void end(Runnable how) {
            synchronized (WholeBody.this) {
                if (ended) {
                    return;
                }
                ended = true;
                deadline.ifPresent(Scheduler.Task::cancel);
            }
            how.run();
        }
    }

    private WholeBody(Request request, EntranceLimits limits) {
        this.request = request;
        this.limits = limits;
    }

    /** @param most bytes that are taken */
    static void gather(Request request, EntranceLimits limits, int most, Then then) {
        WholeBody body = new WholeBody(request, limits);
        if (request.getLength() > most) {
            then.refused(HttpStatus.PAYLOAD_TOO_LARGE_413, body);
        } else {
            body.begin(most, true, limits.toSend().toMillis(), then);
        }
    }

    /**
     * Lets what is still on the way of a refused request arrive, for as long as a body may take.
     *
     * @param then in any case
     */
    void passOver(Runnable then) {
        boolean ends = request.getLength() <= MOST_PASSED_OVER;
        begin(MOST_PASSED_OVER, false, ends ? limits.toSend().toMillis() : BRIEFLY_MILLIS, new Then() {
            @Override public void whole(byte[] body) {
                then.run();
            }

            @Override public void refused(int status, WholeBody rest) {
                then.run();
            }

            @Override public void broken(Throwable why) {
                then.run();
            }
        });
    }

    private void begin(int most, boolean kept, long millis, Then then) {
        synchronized (this) {
            taking = new Taking(most, kept, millis, then);
            if (reading != Reading.NOT) {
                taking.waits();
                return; // whatever comes next is taken so
            }
            reading = Reading.UNDER_WAY;
        }
        read();
    }

    @Override public InvocationType getInvocationType() {
        return InvocationType.NON_BLOCKING;
    }

    /** There is more. */
    @Override public void run() {
        synchronized (this) {
            reading = Reading.UNDER_WAY;
        }
        read();
    }

    private void read() {
        for (Optional<Taking> now = wanted(); now.isPresent(); now = wanted()) {
            Content.Chunk chunk = request.read();
            if (chunk == null) {
                synchronized (this) {
                    taking.waits();
                    reading = Reading.DEMANDED;
                }
                request.demand(this);
                return;
            }
            now.get().take(chunk);
        }
    }

    private synchronized Optional<Taking> wanted() {
        if (taking.ended) {
            reading = Reading.NOT;
            return Optional.empty();
        }
        return Optional.of(taking);
    }
}
