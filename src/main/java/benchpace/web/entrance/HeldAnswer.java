package benchpace.web.entrance;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Takes an answer off the thread that makes it, and sends it when it is whole, so that who reads slowly holds no
 * thread. A live screen's events go out as they are written: each has a thread of its own.
 */
final class HeldAnswer extends Response.Wrapper implements Callback {
    private final Lines lines;
    private final EntranceLimits limits;
    private final Callback answered;
    private ByteArrayOutputStream held = new ByteArrayOutputStream();
    private final Unread unread;
    private int reserved;
    private boolean begun;
    private boolean through;
    private boolean last;
    private int parts = 1;
    private boolean ended;

    /** @param answered is told once the answer was made and has left, or has failed */
    HeldAnswer(Request request, Response response, Callback answered, Lines lines, EntranceLimits limits,
               Unread unread) {
        super(request, response);
        this.answered = answered;
        this.lines = lines;
        this.limits = limits;
        this.unread = unread;
    }

    @Override public void write(boolean isLast, ByteBuffer content, Callback written) {
        begun = true;
        through = through || !isLast && (isLive() || isTooLarge(content) || !reserves(BufferUtil.length(content)));
        last |= isLast;
        if (through && held.size() == 0) {
            super.write(isLast, content, written);
            return;
        }
        held.writeBytes(content == null ? new byte[0] : BufferUtil.toArray(content));
        BufferUtil.clear(content);
        if (through) {
            super.write(isLast, take(), written);
        } else if (isLast) {
            send();
            written.succeeded();
        } else {
            written.succeeded();
        }
    }

    private boolean isTooLarge(ByteBuffer more) {
        return held.size() + BufferUtil.length(more) > limits.answers().largestHeld();
    }

    /** The last write is held in any case, for nobody waits for it; it is no larger than a buffer. */
    private boolean reserves(int more) {
        boolean room = unread.takes(more);
        reserved += room ? more : 0;
        return room;
    }

    private boolean isLive() {
        String type = getHeaders().get(HttpHeader.CONTENT_TYPE);
        boolean live = type != null && type.startsWith("text/event-stream");
        if (live) {
            lines.listens(getRequest());
        }
        return live;
    }

    private ByteBuffer take() {
        ByteBuffer all = ByteBuffer.wrap(held.toByteArray());
        held = new ByteArrayOutputStream(); // what was grown would be kept as long as the answer is not read
        return all;
    }

    private void send() {
        synchronized (this) {
            parts++;
        }
        ByteBuffer all = take();
        long millis = limits.answers().millis(all.remaining());
        Leaving leaving = new Leaving();
        super.write(true, all, leaving);
        leaving.hangUpAfter(millis);
    }

    /** The answer on its way. Most have left before anybody would have to watch over them. */
    private final class Leaving implements Callback {
        private boolean left;
        private Optional<Scheduler.Task> late = Optional.empty();

        synchronized void hangUpAfter(long millis) {
            if (!left) {
                late = Optional.of(getRequest().getComponents().getScheduler().schedule(
                        () -> Lines.hangUp(getRequest()), millis, TimeUnit.MILLISECONDS));
            }
        }

        private synchronized void ends() {
            left = true;
            late.ifPresent(Scheduler.Task::cancel);
        }

        @Override public void succeeded() {
            ends();
            HeldAnswer.this.succeeded();
        }

        @Override public void failed(Throwable why) {
            ends();
            HeldAnswer.this.failed(why);
        }

        @Override public InvocationType getInvocationType() {
            return HeldAnswer.this.getInvocationType();
        }
    }

    @Override public boolean isCommitted() {
        return begun || super.isCommitted();
    }

    @Override public boolean hasLastWrite() {
        return last || super.hasLastWrite();
    }

    /** A part of the work is done: the answer is made, or it has left. */
    @Override public void succeeded() {
        synchronized (this) {
            parts--;
            if (parts > 0 || ended) {
                return;
            }
            ended = true;
        }
        unread.isRidOf(reserved);
        answered.succeeded();
    }

    @Override public void failed(Throwable why) {
        synchronized (this) {
            if (ended) {
                return;
            }
            ended = true;
        }
        unread.isRidOf(reserved);
        answered.failed(why);
    }

    @Override public InvocationType getInvocationType() {
        return answered.getInvocationType();
    }
}
