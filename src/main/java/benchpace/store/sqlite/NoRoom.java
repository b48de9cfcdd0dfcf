package benchpace.store.sqlite;

/** Nothing more can be written where something was to be written, as a disk is full, broken or not to be written to. */
public final class NoRoom extends StoreException {
    private static final long serialVersionUID = 1L;

    NoRoom(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
