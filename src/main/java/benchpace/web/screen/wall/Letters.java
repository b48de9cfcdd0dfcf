package benchpace.web.screen.wall;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How wide words come out on the wall, in em: the advance widths of the letters that come with the program, read from
 * their files. A letter that is not listed counts as a wide one.
 */
enum Letters {
    /** The sans at its usual weight. */
    PLAIN(1, 28, "29 30 65 59 92 73 16 30 30 48 61 21 36 21 39 65 41 55 58 61 59 60 51 62 60 21 21 55 63 55 48 "
            + "78 63 61 64 67 57 55 69 69 39 51 63 54 82 69 71 59 72 61 59 56 69 59 86 62 57 61 34 39 34 55 37 "
            + "24 52 57 48 56 54 31 56 55 25 24 49 26 84 55 55 57 57 35 47 33 54 46 68 48 45 46 34 24 34 56", 65),
    /** The same, bold: wider by a fifteenth at the most. */
    BOLD(1.07, PLAIN),
    /** The serif of the headings. */
    HEAD(1, 25, "37 40 76 72 88 81 21 45 45 58 60 32 51 31 50 65 65 65 65 65 65 65 65 65 65 31 32 60 60 60 54 "
            + "104 79 72 75 79 76 69 77 90 41 52 80 70 104 89 82 70 82 80 72 79 81 78 121 85 79 74 40 50 40 60 60 "
            + "60 62 61 51 62 52 40 52 68 35 30 63 35 104 68 57 63 62 53 54 41 66 60 93 60 58 54 46 60 46 60", 80);

    private static final int FIRST = '!';
    private static final Pattern BREAK = Pattern.compile("\\s+|(?<=\\w-)(?=\\w)");

    private final double stretch;
    private final int space;
    private final int[] hundredths;
    private final int other;

    Letters(double stretch, int space, String hundredths, int other) {
        this.stretch = stretch;
        this.space = space;
        this.hundredths = Arrays.stream(hundredths.split(" ")).mapToInt(Integer::parseInt).toArray();
        this.other = other;
    }

    Letters(double stretch, Letters of) {
        this.stretch = stretch;
        this.space = of.space;
        this.hundredths = of.hundredths;
        this.other = of.other;
    }

    double width(String text) {
        int sum = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            sum += letter(text.codePointAt(at));
        }
        return sum * stretch / 100;
    }

    private int letter(int point) {
        int at = point - FIRST;
        return point == ' ' ? space : at >= 0 && at < hundredths.length ? hundredths[at] : other;
    }

    /** @param lines how many lines are begun or gone on with  @param end how far the last one reaches */
    record Flow(int lines, double end) { }

    /**
     * Lays a text out in lines, broken between words and, where a word is too wide for a line, inside it.
     *
     * @param from how far the first line is taken already
     */
    Flow flow(String text, double size, double width, double from) {
        if (text.isBlank()) {
            return new Flow(0, from);
        }
        double line = from;
        int lines = 1;
        for (String word : words(text)) {
            double wide = width(word) * size;
            double with = line == 0 ? wide : line + width(" ") * size + wide;
            if (with <= width) {
                line = with;
            } else {
                int more = (int) Math.ceil(wide / width) - 1;
                lines += (line == 0 ? 0 : 1) + more;
                line = wide - more * width;
            }
        }
        return new Flow(lines, line);
    }

    /** The widest word, in em. */
    double widestWord(String text) {
        return words(text).stream().mapToDouble(this::width).max().orElse(0);
    }

    /** A hyphen ends a word, too. */
    private static List<String> words(String text) {
        return List.of(BREAK.split(text.strip()));
    }
}
