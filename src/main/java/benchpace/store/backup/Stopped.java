package benchpace.store.backup;

import benchpace.store.sqlite.StoreException;

/** The work was given up, because whoever listens asked for it. */
final class Stopped extends StoreException {
    private static final long serialVersionUID = 1L;

    private Stopped() {
        super("The work was given up.");
    }

    static void unlessWanted(Progress progress) {
        if (progress.stopped()) {
            throw new Stopped();
        }
    }
}
