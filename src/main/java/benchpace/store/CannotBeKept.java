package benchpace.store;

import benchpace.store.sqlite.StoreException;

/**
 * What was to be written down would not be read back as it was meant, so nothing was written. The fault is in what was
 * given, not in the store: the same again would be refused again. The message says what is wrong in one sentence.
 */
public final class CannotBeKept extends StoreException {
    private static final long serialVersionUID = 1L;

    public CannotBeKept(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
