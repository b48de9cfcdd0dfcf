package benchpace.files;

/**
 * Text as it may be opened in a spreadsheet: what would be a formula there gets an apostrophe in front (OWASP ASVS 5.0,
 * 1.2.10; line ends and the wide forms as OWASP's page on CSV injection has them, from memory). Whatever a text is,
 * reading it gives it back.
 */
public final class Formulae {
    private static final String BEGINNINGS = "=+-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20";

    private Formulae() { }

    /** The text as it is written into a file. */
    public static String harmless(String text) {
        return isFormula(text) ? "'" + text : text;
    }

    /** The text that was meant by what stands in a file. */
    public static String asMeant(String written) {
        return written.startsWith("'") && isFormula(written) ? written.substring(1) : written;
    }

    /** Or one that was made harmless before, so that of two apostrophes one is taken off. */
    private static boolean isFormula(String text) {
        int first = 0;
        while (first < text.length() && text.charAt(first) == '\'') {
            first++;
        }
        return first < text.length() && BEGINNINGS.indexOf(text.charAt(first)) >= 0;
    }
}
