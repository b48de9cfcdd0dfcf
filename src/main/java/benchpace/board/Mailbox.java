package benchpace.board;

import benchpace.board.view.MadeView;
import benchpace.board.view.MadeView.Order;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Where one screen's newest view waits for that screen's own writer. A view that was not fetched yet is replaced by a
 * newer one, so a screen that stalls costs nothing but itself.
 */
public final class Mailbox implements AutoCloseable {
    private final Consumer<Mailbox> onClose;
    private MadeView newest;
    private Order last = Order.BEFORE_ALL;
    private boolean nudged;
    private boolean closed;

    /** @param onClose told once it is closed */
    public Mailbox(Consumer<Mailbox> onClose) {
        this.onClose = onClose;
    }

    /** A view older than one that was here before, waiting or fetched, is dropped. */
    public synchronized void put(MadeView made) {
        if (made.order().compareTo(last) > 0) {
            last = made.order();
            newest = made;
            notifyAll();
        }
    }

    /** Something that screens show beside the class has changed: lets its screen look again, without a view. */
    public synchronized void nudge() {
        nudged = true;
        notifyAll();
    }

    /** Waits for the newest view; empty when none came within {@code patience}, by a nudge, or once it is closed. */
    public synchronized Optional<MadeView> take(Duration patience) throws InterruptedException {
        long deadline = System.nanoTime() + patience.toNanos();
        while (newest == null && !nudged && !closed) {
            long left = (deadline - System.nanoTime()) / 1_000_000;
            if (left <= 0) {
                return Optional.empty();
            }
            wait(left);
        }
        MadeView taken = newest;
        newest = null;
        nudged = false;
        return Optional.ofNullable(closed ? null : taken);
    }

    public synchronized boolean isClosed() {
        return closed;
    }

    @Override public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        onClose.accept(this);
    }
}
