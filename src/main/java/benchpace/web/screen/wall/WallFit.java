package benchpace.web.screen.wall;

import java.util.List;
import java.util.Locale;

/**
 * The size of the words beside a drawing: the largest that have room, in units of a 1920 x 1080 screen as {@code
 * wall.css} draws them. A caution gives up its last sentences before anything is smaller than 16 minutes of arc at 5 m.
 *
 * @param token     names the sizes in the style sheet
 * @param heading   height of its letters
 * @param sentence  the same of the sentence and the count
 * @param column    how wide the words are; the drawing stands beside them
 * @param wide      whether the caution runs along below both
 */
public enum WallFit {
    GENEROUS(144, 104, 1120, false), LARGE(132, 96, 1120, false), USUAL(120, 88, 1120, false),
    WIDE(120, 88, 1120, true), CLOSE(104, 88, 1240, false), CLOSE_WIDE(104, 88, 1240, true),
    TIGHT(88, 88, 1330, true), SMALL(80, 80, 1330, true), SMALLEST(80, 72, 1330, true);

    /** Of the words and the caution together, between a studio's name of two lines and a rail of one. */
    private static final int ROOM = 720;
    private static final int WIDTH = 1752;
    private static final int STRONG = 88;
    private static final int REST = 72;
    /** Mark, frame and the space within it. */
    private static final int BESIDE_CAUTION = 210;
    private static final int AROUND_CAUTION = 46;

    private final int heading;
    private final int sentence;
    private final int column;
    private final boolean wide;

    WallFit(int heading, int sentence, int column, boolean wide) {
        this.heading = heading;
        this.sentence = sentence;
        this.column = column;
        this.wide = wide;
    }

    public String token() {
        return "told--" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What has to have room.
     *
     * @param extra   lines of the usual size beyond heading and sentence
     * @param caution its sentences
     * @param taken   height that something else takes
     */
    record Told(String heading, String sentence, int extra, List<String> caution, int taken) { }

    /** @param shown how many sentences of the caution */
    record Chosen(WallFit fit, int shown) { }

    static Chosen of(Told told) {
        for (int shown = told.caution().size(); shown >= Math.min(1, told.caution().size()); shown--) {
            for (WallFit fit : values()) {
                if (fit.holds(told, shown)) {
                    return new Chosen(fit, shown);
                }
            }
        }
        return new Chosen(SMALLEST, Math.min(1, told.caution().size()));
    }

    private boolean holds(Told told, int shown) {
        double words = Letters.HEAD.lines(told.heading(), heading, column) * heading * 1.08
                + Letters.PLAIN.lines(told.sentence(), sentence, column) * sentence * 1.18
                + told.extra() * sentence * 1.25 + 24 * (1 + Math.min(1, told.extra()));
        return words + caution(told.caution(), shown) <= ROOM - told.taken()
                && Letters.HEAD.widestWord(told.heading()) * heading <= column;
    }

    private double caution(List<String> sentences, int shown) {
        if (shown == 0) {
            return 0;
        }
        double width = (wide ? WIDTH : column) - BESIDE_CAUTION;
        double first = Letters.BOLD.lines(sentences.get(0), STRONG, width) * STRONG * 1.1;
        double rest = Letters.PLAIN.lines(String.join(" ", sentences.subList(1, shown)), REST, width) * REST * 1.15;
        return first + rest + AROUND_CAUTION + 24;
    }
}
