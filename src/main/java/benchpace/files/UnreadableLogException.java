package benchpace.files;

/** A log that can't be read. Its message is one plain sentence that names the file and the line. */
public final class UnreadableLogException extends Exception {
    private static final long serialVersionUID = 1L;

    UnreadableLogException(String sentence) {
        super(sentence);
    }
}
