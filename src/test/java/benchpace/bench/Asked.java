package benchpace.bench;

import java.util.List;
import java.util.stream.Stream;

/** What a measurement is asked for on the command line; what is absent or empty is as usual. */
final class Asked {
    private Asked() {
    }

    static int number(String property, int usual) {
        return numbers(property, Integer.toString(usual)).get(0);
    }

    /** A tenth of it where {@code -Dshort} asks for a short run. */
    static int shortened(int usual) {
        return isShort() ? Math.max(1, usual / 10) : usual;
    }

    static boolean isShort() {
        return Boolean.parseBoolean(System.getProperty("short", ""));
    }

    /** Whether one of several is asked for, with commas between them; all are where none is named. */
    static boolean isAmong(String property, String one) {
        String asked = System.getProperty(property, "");
        return asked.isBlank() || List.of(asked.split(",")).contains(one);
    }

    /** @param usual numbers with commas between them */
    static List<Integer> numbers(String property, String usual) {
        String asked = System.getProperty(property, "");
        return Stream.of((asked.isBlank() ? usual : asked).split(",")).map(String::strip).map(Integer::valueOf)
                .toList();
    }
}
