package benchpace.words;

import java.util.List;

/** What is wrong with a field of a form, to be read beside it. */
public final class FieldWords {
    private static final List<String> BEGINNINGS = List.of("must ", "is ", "holds ", "says ", "are ");

    private FieldWords() { }

    /** "1,500" is fifteen hundred to some and one and a half to others. */
    public static String eitherNumber(String typed) {
        return "\"" + typed + "\" can be a thousand and more or one and a part: write it without a comma";
    }

    /**
     * A whole sentence of what else is read after the place of a fault: "must be 1 to 60, not 99" becomes "This must be
     * 1 to 60, not 99."
     */
    public static String beside(String finding) {
        String said = finding.equals("is missing") || finding.equals("must not be empty")
                || finding.endsWith(" is missing") ? "is missing" : finding;
        String whole = BEGINNINGS.stream().anyMatch(said::startsWith) ? "This " + said : Phrases.sentence(said);
        return whole.endsWith(".") || whole.endsWith("?") ? whole : whole + ".";
    }
}
