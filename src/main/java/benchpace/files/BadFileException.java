package benchpace.files;

/** A file or a part of it that cannot be used; the message is one plain sentence that names the place. */
public final class BadFileException extends Exception {
    private static final long serialVersionUID = 1L;

    public BadFileException(String sentence) {
        super(sentence);
    }
}
