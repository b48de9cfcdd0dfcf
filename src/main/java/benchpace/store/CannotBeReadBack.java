package benchpace.store;

import benchpace.store.sqlite.StoreException;

/** What was written down is not what a start can read: of the class itself, and not of the file it stands in. */
public final class CannotBeReadBack extends StoreException {
    private static final long serialVersionUID = 1L;

    /** @param sentence for whoever runs the board */
    public CannotBeReadBack(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
