package benchpace.files;

/** A file cannot be used; the message is one plain sentence that names the file and the place in it. */
public final class BadFile extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BadFile(String sentence) {
        super(sentence);
    }

    public BadFile(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
