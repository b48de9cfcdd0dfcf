package benchpace.web.entrance;

import java.io.ByteArrayOutputStream;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.thread.Invocable;
import org.eclipse.jetty.util.thread.Scheduler;

/** Takes the body of one request as it comes, holding no thread meanwhile. */
final class WholeBody implements Invocable.Task {
    /** How much of a refused body is passed over: closing over unread bytes may swallow the refusal (RFC 9112, 9.6). */
    private static final int MOST_PASSED_OVER = 1024 * 1024;
    private static final long PASSING_OVER_MILLIS = 2000;

    private final Request request;
    private final int largest;
    private final boolean kept;
    private final Then then;
    private int length;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private Scheduler.Task deadline;
    private boolean ended;

    /** What becomes of it; exactly one of these is called, once. */
    interface Then {
        void whole(byte[] body);

        void tooLarge();

        void late();

        void broken(Throwable why);
    }

    private WholeBody(Request request, int largest, boolean kept, Then then) {
        this.request = request;
        this.largest = largest;
        this.kept = kept;
        this.then = then;
    }

    static void gather(Request request, EntranceLimits limits, Then then) {
        if (request.getLength() > limits.largestBody()) {
            then.tooLarge();
        } else {
            new WholeBody(request, limits.largestBody(), true, then).begin(limits.toSend().toMillis());
        }
    }

    /** Lets what is still on the way of a refused request arrive, briefly. @param then in any case */
    static void passOver(Request request, Runnable then) {
        new WholeBody(request, MOST_PASSED_OVER, false, new Then() {
            @Override public void whole(byte[] body) {
                then.run();
            }

            @Override public void tooLarge() {
                then.run();
            }

            @Override public void late() {
                then.run();
            }

            @Override public void broken(Throwable why) {
                then.run();
            }
        }).begin(PASSING_OVER_MILLIS);
    }

    private void begin(long millis) {
        synchronized (this) {
            deadline = request.getComponents().getScheduler().schedule(this::late, millis, TimeUnit.MILLISECONDS);
        }
        run();
    }

    @Override public InvocationType getInvocationType() {
        return InvocationType.NON_BLOCKING;
    }

    /** Takes what is there. Called again when there is more. */
    @Override public void run() {
        while (!hasEnded()) {
            Content.Chunk chunk = request.read();
            if (chunk == null) {
                request.demand(this);
                return;
            }
            if (Content.Chunk.isFailure(chunk)) {
                end(chunk.getFailure() instanceof TimeoutException ? then::late
                        : () -> then.broken(chunk.getFailure()));
                return;
            }
            take(chunk);
        }
    }

    private void take(Content.Chunk chunk) {
        boolean last = chunk.isLast();
        length += chunk.remaining();
        if (kept && length <= largest) {
            bytes.writeBytes(BufferUtil.toArray(chunk.getByteBuffer()));
        }
        chunk.release();
        if (length > largest) {
            end(then::tooLarge);
        } else if (last) {
            end(() -> then.whole(bytes.toByteArray()));
        }
    }

    private void late() {
        end(then::late);
    }

    private synchronized boolean hasEnded() {
        return ended;
    }

    private void end(Runnable how) {
        synchronized (this) {
            if (ended) {
                return;
            }
            ended = true;
            deadline.cancel();
        }
        how.run();
    }
}
