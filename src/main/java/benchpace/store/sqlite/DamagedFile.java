package benchpace.store.sqlite;

/** What stands in a file is not what was written to it. */
public final class DamagedFile extends StoreException {
    private static final long serialVersionUID = 1L;

    DamagedFile(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
