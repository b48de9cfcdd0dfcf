package benchpace.files;

/** A field of an event or command is missing, of the wrong type, or out of its range. */
public final class BadField extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String field;
    private final String sentence;

    /**
     * @param field    its name, with those around it if nested ({@code plan/steps/0/minutes}); empty for the whole
     * @param sentence what is wrong, to be read after the field's name
     */
    public BadField(String field, String sentence) {
        super(field.isEmpty() ? sentence : "\"" + field + "\" " + sentence);
        this.field = field;
        this.sentence = sentence;
    }

    public static BadField of(Finding problem) {
        String field = problem.place().startsWith("/") ? problem.place().substring(1) : problem.place();
        return new BadField(field, problem.sentence());
    }

    public String field() {
        return field;
    }

    public String sentence() {
        return sentence;
    }
}
