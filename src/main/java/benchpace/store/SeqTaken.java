package benchpace.store;

import benchpace.store.sqlite.StoreException;

/** The class already has an event of that number, or lacks the one before: somebody else wrote in between. */
public final class SeqTaken extends StoreException {
    private static final long serialVersionUID = 1L;

    public SeqTaken(String classId, long seq, Throwable cause) {
        super("Event " + seq + " of class " + classId + " does not follow the last one in the store.", cause);
    }
}
