package benchpace.files;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The words of our files: how a constant is spelt there, and which known word was probably meant. */
public final class Words {
    private Words() { }

    /** {@code LONG_TABLE} is spelt {@code long-table}. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static <E extends Enum<E>> Optional<E> constant(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants()).filter(c -> of(c).equals(word)).findFirst();
    }

    public static <E extends Enum<E>> List<String> all(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Words::of).toList();
    }

    public static String quoted(Collection<String> words) {
        return words.stream().map(w -> "\"" + w + "\"").collect(Collectors.joining(", "));
    }

    /** The known word that differs by a slip of the fingers: a third of its letters at most. */
    static Optional<String> nearest(String word, Collection<String> known) {
        return known.stream()
                .min(Comparator.comparingInt(k -> slips(word, k)))
                .filter(k -> slips(word, k) <= Math.max(1, k.length() / 3));
    }

    /** "; did you mean ...?", or nothing. */
    public static String suggestion(String word, Collection<String> known) {
        return nearest(word, known).map(k -> "; did you mean \"" + k + "\"?").orElse("");
    }

    /**
     * How many letters must be put in, left out, changed or swapped with their neighbour to make one word the other:
     * optimal string alignment, Navarro, "A guided tour to approximate string matching", ACM Computing Surveys 33
     * (2001), section 5. Capitals do not count.
     */
    static int slips(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        if (a.length() > 60) {
            return a.length();
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
