package benchpace.words;

/**
 * Why something was refused.
 *
 * @param code   names the kind of refusal for programs
 * @param title  the kind in a few words, the same for all of its kind
 * @param detail this one, in a sentence for whoever tapped
 */
public record Explanation(Kind kind, String code, String title, String detail) {

    /** What is wrong with what was asked for. */
    public enum Kind {
        /** It does not fit how things stand. */
        CONFLICT,
        /** It names something that is not there, or a value that cannot be. */
        VALUE,
        /** What it is to be done to is not there. */
        ABSENT,
        /** It was meant for something as it no longer is. */
        STALE
    }

    static Explanation conflict(String code, String title, String detail) {
        return new Explanation(Kind.CONFLICT, code, title, detail);
    }

    static Explanation value(String code, String title, String detail) {
        return new Explanation(Kind.VALUE, code, title, detail);
    }

    static Explanation absent(String code, String title, String detail) {
        return new Explanation(Kind.ABSENT, code, title, detail);
    }

    /** The id of a command names one wish for good; sent with another, nothing is done. @param detail whose it is */
    static Explanation idTaken(String detail) {
        return conflict("id-taken", "That id stands for something else",
                detail + " Nothing was changed; send it with an id of its own.");
    }
}
