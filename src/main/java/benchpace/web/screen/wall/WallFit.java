package benchpace.web.screen.wall;

import benchpace.files.Words;
import benchpace.words.Sentences;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * The size of the words beside a drawing: the largest that have room, in units of a 1920 x 1080 screen as {@code
 * wall.css} draws them. A caution gives up its last sentences before the heading or the sentence is smaller than 20
 * minutes of arc at 5 m; nothing is ever smaller than 16, and where that is too large words are left out at the end.
 */
public enum WallFit {
    GENEROUS(144, 104, 1120, false), LARGE(132, 96, 1120, false), USUAL(120, 88, 1120, false),
    WIDE(120, 88, 1120, true), CLOSE(104, 88, 1240, false), CLOSE_WIDE(104, 88, 1240, true),
    TIGHT(88, 88, 1330, true),
    /** Smaller than one would like, for what is unusually long. */
    SMALL(80, 80, 1330, true), SMALLEST(80, 72, 1330, true),
    /** Without a drawing. */
    BARE(80, 72, 1752, true);

    /** Of the words and the caution together, between a studio's name on one line and a rail of one. */
    private static final int ROOM = 776;
    /** The second line that a long name of a studio has, except beside words that need it. */
    private static final int SECOND_LINE = 66;
    private static final int WIDTH = 1752;
    private static final int STRONG = 88;
    private static final int REST = 72;
    /** Mark, frame and the space within it. */
    private static final int BESIDE_CAUTION = 180;
    private static final int AROUND_CAUTION = 42;
    private static final int GAP = 24;
    /** Fewer words of a sentence say nothing. */
    private static final int FEWEST_WORDS = 4;
    private static final double HEADING_LINE = 1.06;
    private static final double LINE = 1.16;
    private static final double STRONG_LINE = 1.09;
    private static final double REST_LINE = 1.13;

    private final int heading;
    private final int sentence;
    private final int column;
    private final boolean wide;

    /**
     * @param heading  height of its letters
     * @param sentence the same of the sentence and the count
     * @param column   how wide the words are; the drawing stands beside them
     * @param wide     whether the caution runs along below both
     */
    WallFit(int heading, int sentence, int column, boolean wide) {
        this.heading = heading;
        this.sentence = sentence;
        this.column = column;
        this.wide = wide;
    }

    public String token() {
        return "told--" + Words.of(this);
    }

    /**
     * What has to have room.
     *
     * @param lines   what stands beside heading and sentence, in lines of the sentence's size
     * @param caution its sentences
     * @param taken   height that something else takes
     * @param names   height of a second line of names on the rail, which stands aside for unusually long words
     */
    record Told(String heading, String sentence, double lines, List<String> caution, int taken, int names) { }

    /**
     * @param sentence as much of it as has room
     * @param caution  its sentences that have room, or the first words of the first
     */
    record Chosen(WallFit fit, String sentence, List<String> caution) { }

    static Chosen of(Told told) {
        int least = Math.min(1, told.caution().size());
        for (int shown = told.caution().size(); shown >= least; shown--) {
            List<String> caution = told.caution().subList(0, shown);
            for (WallFit fit : values()) {
                if (fit.compareTo(SMALL) < 0 && fit.holds(told, told.sentence(), caution)) {
                    return new Chosen(fit, told.sentence(), caution);
                }
            }
        }
        List<String> first = told.caution().subList(0, least);
        return Arrays.stream(values()).filter(fit -> fit.compareTo(SMALL) >= 0)
                .filter(fit -> fit.holds(told, told.sentence(), first)).findFirst()
                .map(fit -> new Chosen(fit, told.sentence(), first)).orElseGet(() -> shortened(told, first));
    }

    /** The tablet has all of it: here the caution keeps its words before the sentence does, but leaves it a few. */
    private static Chosen shortened(Told told, List<String> first) {
        String few = begun(told.sentence(), words -> false);
        List<String> caution = first.isEmpty() || BARE.holds(told, few, first) ? first
                : List.of(begun(first.get(0), words -> BARE.holds(told, few, List.of(words))));
        return new Chosen(BARE, shortened(told, caution, few), caution);
    }

    /**
     * The tablet's cue is said aloud: here the sentences that have room, else the first one's words; nothing where
     * hardly any has.
     */
    private static String shortened(Told told, List<String> caution, String few) {
        List<String> sentences = Sentences.of(told.sentence());
        for (int whole = sentences.size(); whole > 0; whole--) {
            String kept = String.join(" ", sentences.subList(0, whole));
            if (BARE.holds(told, kept, caution)) {
                return kept;
            }
        }
        String begun = sentences.isEmpty() ? "" : begun(sentences.get(0), words -> BARE.holds(told, words, caution));
        return BARE.holds(told, begun, caution) ? begun : "";
    }

    /** So many of a sentence's words as have room, but a few at least; all of it if it has no more than those. */
    private static String begun(String sentence, Predicate<String> room) {
        List<String> words = List.of(sentence.strip().split("\\s+"));
        String begun = sentence.strip();
        for (int kept = words.size() - 1; kept >= FEWEST_WORDS && !room.test(begun); kept--) {
            begun = String.join(" ", words.subList(0, kept)).replaceFirst("[,;:.]$", "") + "\u2026";
        }
        return begun;
    }

    boolean holds(Told told, String words, List<String> caution) {
        double height = Letters.HEAD.flow(told.heading(), heading, column, 0).lines() * heading * HEADING_LINE
                + Letters.PLAIN.flow(words, sentence, column, 0).lines() * sentence * LINE
                + told.lines() * Math.max(STRONG, sentence) * LINE + GAP * (1 + Math.ceil(Math.min(1, told.lines())));
        return height + caution(caution) <= room(told)
                && (this == BARE || Letters.HEAD.widestWord(told.heading()) * heading <= column);
    }

    private double room(Told told) {
        return ROOM - told.taken() - (compareTo(CLOSE) < 0 ? SECOND_LINE : 0)
                - (compareTo(SMALL) < 0 ? told.names() : 0);
    }

    private double caution(List<String> sentences) {
        if (sentences.isEmpty()) {
            return 0;
        }
        double width = (wide ? WIDTH : column) - BESIDE_CAUTION;
        Letters.Flow first = Letters.BOLD.flow(sentences.get(0), STRONG, width, 0);
        Letters.Flow rest = Letters.PLAIN.flow(String.join(" ", sentences.subList(1, sentences.size())), REST, width,
                first.end() + REST / 4.0);
        return first.lines() * STRONG * STRONG_LINE + Math.max(0, rest.lines() - 1) * REST * REST_LINE
                + AROUND_CAUTION + GAP;
    }
}
