package benchpace.board;

import benchpace.board.view.MadeView;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArraySet;
import java.util.function.Supplier;

/** The mailboxes of all screens that look at one class, or at one playback. Safe for use by many threads. */
public final class Mailboxes {
    private final Set<Mailbox> open = new CopyOnWriteArraySet<>();
    private final Runnable left;

    /** @param left told when a screen has gone */
    public Mailboxes(Runnable left) {
        this.left = left;
    }

    /** One more; it holds a view at once. @param first may fail, and then there is none */
    public Mailbox open(Supplier<MadeView> first) {
        Mailbox mailbox = new Mailbox(this::leaves);
        open.add(mailbox); // first, so that it misses none that is shown meanwhile
        try {
            mailbox.put(first.get());
        } catch (RuntimeException | Error e) {
            mailbox.close();
            throw e;
        }
        return mailbox;
    }

    private void leaves(Mailbox mailbox) {
        open.remove(mailbox);
        left.run();
    }

    public void show(MadeView view) {
        open.forEach(mailbox -> mailbox.put(view));
    }

    /** Something that screens show beside the class has changed. */
    public void nudge() {
        open.forEach(Mailbox::nudge);
    }

    public void close() {
        open.forEach(Mailbox::close);
    }

    public boolean isEmpty() {
        return open.isEmpty();
    }
}
