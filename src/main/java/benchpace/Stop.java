package benchpace;

/** Ends the program with one plain sentence on standard error. */
final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int code;

    Stop(int code, String sentence) {
        super(sentence);
        this.code = code;
    }

    /** @param cause shown with {@code --debug} */
    Stop(int code, String sentence, Throwable cause) {
        super(sentence, cause);
        this.code = code;
    }

    int code() {
        return code;
    }
}
