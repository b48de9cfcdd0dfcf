package benchpace.units;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and the word that follows it.
 *
 * @param digits as typed: "8", "226,8", "8 1/2", "-40"
 * @param unit   as typed; empty if there is none
 */
record Quantity(String digits, String unit) {
    private static final Pattern ONE = Pattern.compile(
            "([+\\-\\u2212]?(?:\\d{1,9} )?\\d{1,9}/\\d{1,9}|[+\\-\\u2212]?\\d{1,9}(?:[.,]\\d{1,15})?|½) ?([^\\d½]*)");

    /** All that stand on a line one after another; none if there is anything else on it. */
    static List<Quantity> parts(String line) {
        List<Quantity> parts = new ArrayList<>();
        Matcher one = ONE.matcher(line);
        int end = 0;
        while (one.find() && one.start() == end) {
            parts.add(new Quantity(one.group(1), one.group(2).strip()));
            end = one.end();
        }
        return end == line.length() ? parts : List.of();
    }

    /** "1,361" is a thousand and more to some and one and a part to others. */
    boolean isAmbiguous() {
        return digits.matches("[+\\-\\u2212]?[1-9]\\d{0,2},\\d{3}");
    }

    double number() {
        String plain = digits.replace('\u2212', '-').replace(',', '.').replace("½", "1/2");
        int slash = plain.indexOf('/');
        if (slash < 0) {
            return Double.parseDouble(plain);
        }
        String[] whole = plain.substring(0, slash).split(" ");
        double share = Double.parseDouble(whole[whole.length - 1]) / Double.parseDouble(plain.substring(slash + 1));
        return whole.length == 1 ? share : Double.parseDouble(whole[0]) + Math.copySign(share,
                plain.startsWith("-") ? -1 : 1);
    }
}
