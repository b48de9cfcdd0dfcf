package benchpace.store.backup;

import benchpace.store.sqlite.StoreException;

/** What was asked for would take something away, or cannot be meant; the message is one plain sentence. */
public final class NotAsked extends StoreException {
    private static final long serialVersionUID = 1L;

    NotAsked(String sentence) {
        super(sentence);
    }
}
