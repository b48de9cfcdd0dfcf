package benchpace.web;

import java.util.regex.Pattern;

/**
 * A script or a style sheet as a browser needs it: comments, indentation and empty lines are for those who write it.
 * Lines stay lines, as a script may end a statement by one, and what stands in quotes stays as it is.
 */
final class WithoutComments {
    /** After these a stroke begins a pattern; after anything else it divides. */
    private static final String BEFORE_PATTERN = "(,=:[!&|?{};+-*%<>~^";
    private static final Pattern WORD_BEFORE_PATTERN = Pattern.compile(
            "(^|.*[^\\w$.])(return|typeof|case|in|of|delete|void|throw|do|else|await|yield)", Pattern.DOTALL);

    private final String text;
    private final boolean script;
    private final StringBuilder out = new StringBuilder();
    private int at;

    private WithoutComments(String text, boolean script) {
        this.text = text;
        this.script = script;
    }

    static String ofScript(String text) {
        return new WithoutComments(text, true).read();
    }

    static String ofStyle(String text) {
        return new WithoutComments(text, false).read();
    }

    private String read() {
        code(false);
        return out.toString();
    }

    /** @param inTemplate up to the brace that ends an expression inside of a template */
    private void code(boolean inTemplate) {
        for (int depth = 0; at < text.length();) {
            char c = text.charAt(at);
            if (text.startsWith("/*", at)) {
                skipTo("*/", 2);
            } else if (script && text.startsWith("//", at)) {
                skipTo("\n", 0);
            } else if (c == '"' || c == '\'') {
                quoted(c);
            } else if (script && c == '`') {
                template();
            } else if (script && c == '/' && beginsPattern()) {
                pattern();
            } else if (c == '\n') {
                endLine();
            } else {
                depth += c == '{' ? 1 : c == '}' ? -1 : 0;
                out.append(c);
                at++;
                if (inTemplate && depth < 0) {
                    return;
                }
            }
        }
    }

    private void skipTo(String end, int length) {
        int found = text.indexOf(end, at + length);
        at = found < 0 ? text.length() : found + length;
    }

    /** Without the blanks at its end, the whole line if it is empty, and without those that the next begins with. */
    private void endLine() {
        int end = out.length();
        while (end > 0 && out.charAt(end - 1) == ' ') {
            end--;
        }
        out.setLength(end);
        if (end > 0 && out.charAt(end - 1) != '\n') {
            out.append('\n');
        }
        at++;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private void quoted(char quote) {
        int from = at++;
        while (at < text.length() && text.charAt(at) != quote) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        at = Math.min(at + 1, text.length());
        out.append(text, from, at);
    }

    private void template() {
        out.append(text.charAt(at++));
        while (at < text.length()) {
            char c = text.charAt(at);
            if (text.startsWith("${", at)) {
                out.append("${");
                at += 2;
                code(true);
            } else if (c == '\\') {
                out.append(text, at, at + 2);
                at += 2;
            } else {
                out.append(c);
                at++;
                if (c == '`') {
                    return;
                }
            }
        }
    }

    private boolean beginsPattern() {
        String before = out.substring(Math.max(0, out.length() - 40)).stripTrailing();
        if (before.endsWith("++") || before.endsWith("--")) {
            return false;
        }
        return before.isEmpty() || BEFORE_PATTERN.indexOf(before.charAt(before.length() - 1)) >= 0
                || WORD_BEFORE_PATTERN.matcher(before).matches();
    }

    /** A stroke within brackets does not end it. */
    private void pattern() {
        int from = at++;
        for (boolean oneOf = false; at < text.length() && (oneOf || text.charAt(at) != '/'); at++) {
            char c = text.charAt(at);
            oneOf = c == '[' || oneOf && c != ']';
            at += c == '\\' ? 1 : 0;
        }
        at = Math.min(at + 1, text.length());
        out.append(text, from, at);
    }
}
