package benchpace.store.sqlite;

/** The store cannot be opened, read or written; the message is one plain sentence for whoever runs the board. */
public class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public StoreException(String sentence) {
        super(sentence);
    }

    public StoreException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
