package benchpace.web.screen.wall;

import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.web.screen.shell.Counter;
import benchpace.words.CureWords;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The cure as a ribbon of time, drawn as an SVG {@value #WIDTH} wide: poured here, now here, ready somewhere in this
 * band. The browser moves the present along it.
 *
 * @param from      when the ribbon begins, with the first pour: RFC 3339
 * @param until     when it ends, a full half hour some time after the band, so that a band that narrows is seen to
 * @param bandX     where the range of all candles still to be tried begins
 * @param nowX      where the present is as the page is made
 * @param poured    "poured 19:13"; empty where there is no room for it before the present
 * @param words     the range, its times apart; none once it is past
 * @param moved     why the band has just moved; empty if it has not
 * @param described the drawing in words
 */
public record WallRibbon(String from, String until, double bandX, double bandWidth, double nowX, String poured,
                         List<Piece> words, String moved, String described) {
    public static final int WIDTH = 960;
    /** What is shown behind the band at least, as a share of all before. */
    private static final double BEHIND = 0.06;
    private static final Duration STEP = Duration.ofMinutes(30);
    /** The present keeps clear of the ribbon's end. */
    private static final double END = 8;
    /** Letters on the ribbon, and half of the word "now" with some air. */
    private static final double SIZE = 72;
    private static final double NOW = 110;
    private static final Pattern TIMES = Pattern.compile("\\d\\d:\\d\\d(?: to \\d\\d:\\d\\d)?,?");

    /** Some words. @param time times of day */
    public record Piece(String words, boolean time) { }

    /** Lines of words under it. */
    int lines() {
        return words.size() / 2;
    }

    /** Empty when no candle is waited for. */
    static Optional<WallRibbon> of(ClassView view, Times times) {
        ClassView.CureView cure = view.cure();
        return cure.range().map(range -> {
            Instant from = cure.firstPour().filter(p -> p.isBefore(range.from())).orElse(range.from());
            Instant until = end(from, range.until());
            double perSecond = WIDTH / (double) Duration.between(from, until).toSeconds();
            double bandX = x(from, range.from(), perSecond);
            double bandEnd = x(from, range.until(), perSecond);
            double nowX = Math.min(WIDTH - END, x(from, view.now(), perSecond));
            return new WallRibbon(Counter.iso(from), Counter.iso(until), bandX, tenth(bandEnd - bandX), nowX,
                    poured(cure, times.clock(from), nowX), range.phase(view.now()) == SaidRange.Phase.PAST ? List.of()
                    : pieces(CureWords.range(cure, range, times)), CureWords.moved(view),
                    "A ribbon of time from " + times.clock(from) + " on; the candles are ready somewhere in the band "
                            + "from " + times.said(range) + ".");
        });
    }

    private static Instant end(Instant from, Instant bandEnd) {
        Duration all = Duration.between(from, bandEnd);
        long least = bandEnd.plusSeconds(Math.round(all.toSeconds() * BEHIND)).getEpochSecond();
        return Instant.ofEpochSecond(-Math.floorDiv(-least, STEP.toSeconds()) * STEP.toSeconds());
    }

    private static String poured(ClassView.CureView cure, String clock, double nowX) {
        String words = "poured " + (cure.poured() > 1 ? "from " : "") + clock;
        return Letters.PLAIN.width(words) * SIZE + NOW < nowX ? words : "";
    }

    private static List<Piece> pieces(String words) {
        List<Piece> pieces = new ArrayList<>();
        Matcher time = TIMES.matcher(words);
        int said = 0;
        while (time.find()) {
            pieces.add(new Piece(words.substring(said, time.start()).strip(), false));
            pieces.add(new Piece(time.group(), true));
            said = time.end();
        }
        return pieces;
    }

    private static double x(Instant from, Instant at, double perSecond) {
        return tenth(Math.max(0, Duration.between(from, at).toSeconds() * perSecond));
    }

    private static double tenth(double units) {
        return Math.rint(units * 10) / 10;
    }
}
