package benchpace.store;

import benchpace.store.sqlite.StoreException;

/** What was written down is not what a start can read: of the class itself, and not of the file it stands in. */
public final class CannotBeReadBack extends StoreException {
    private static final long serialVersionUID = 1L;

    /** @param sentence for whoever runs the board */
    public CannotBeReadBack(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /**
     * The failure of a reading, where it tells something of what is read: it is this, or that it does not add up.
     *
     * @throws StoreException the failure itself, where it is of the file
     */
    public static RuntimeException or(RuntimeException failure) {
        if (failure instanceof StoreException && !(failure instanceof CannotBeReadBack)) {
            throw failure;
        }
        return failure;
    }
}
