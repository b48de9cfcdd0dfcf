package benchpace.store.backup;

import benchpace.store.sqlite.StoreException;

/** A file that nothing can be restored from; the message is one plain sentence. */
public final class BadBackup extends StoreException {
    private static final long serialVersionUID = 1L;

    BadBackup(String sentence) {
        super(sentence);
    }

    BadBackup(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
