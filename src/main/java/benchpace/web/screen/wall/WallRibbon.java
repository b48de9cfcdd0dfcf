package benchpace.web.screen.wall;

import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.web.screen.shell.Counter;
import benchpace.words.CureWords;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The cure as a ribbon of time, drawn as an SVG {@value #WIDTH} wide: poured here, now here, ready somewhere in this
 * band. The browser moves the present along it.
 *
 * @param from      when the ribbon begins, with the first pour: RFC 3339
 * @param until     when it ends, some time after the band
 * @param bandX     where the range of all candles still to be tried begins
 * @param likelyX   where half of them are likely ready
 * @param nowX      where the present is as the page is made
 * @param poured    "poured 19:13"; empty while the present stands there
 * @param words     the range; empty once it is past
 * @param described the drawing in words
 */
public record WallRibbon(String from, String until, double bandX, double bandWidth, double likelyX, double nowX,
                         String poured, String words, String described) {
    public static final int WIDTH = 1792;
    /** What is shown behind the band, as a share of all before. */
    private static final double BEHIND = 0.08;
    /** The point keeps clear of the band's ends, the present of the ribbon's. */
    private static final double POINT = 16;
    /** Beyond this the word over the present keeps clear of when the candles were poured. */
    private static final double CLEAR = 460;

    /** Empty when no candle is waited for. */
    static Optional<WallRibbon> of(ClassView view, Times times) {
        ClassView.CureView cure = view.cure();
        return cure.range().map(range -> {
            Instant from = cure.firstPour().filter(p -> p.isBefore(range.from())).orElse(range.from());
            Duration all = Duration.between(from, range.until());
            Instant until = range.until().plusSeconds(Math.round(all.toSeconds() * BEHIND));
            double perSecond = WIDTH / (double) Duration.between(from, until).toSeconds();
            double bandX = x(from, range.from(), perSecond);
            double bandEnd = x(from, range.until(), perSecond);
            double likely = Math.max(bandX + POINT, Math.min(bandEnd - POINT,
                    x(from, cure.likely().orElse(range.from()), perSecond)));
            String words = range.phase(view.now()) == SaidRange.Phase.PAST ? "" : CureWords.range(cure, range, times);
            double nowX = Math.min(WIDTH - POINT / 2, x(from, view.now(), perSecond));
            String poured = nowX < CLEAR ? "" : (cure.poured() > 1 ? "poured from " : "poured ") + times.clock(from);
            return new WallRibbon(Counter.iso(from), Counter.iso(until), bandX, tenth(bandEnd - bandX), tenth(likely),
                    nowX, poured, words,
                    "A ribbon of time from " + times.clock(from) + " on; the candles are ready somewhere in the band "
                            + "from " + times.said(range) + ".");
        });
    }

    private static double x(Instant from, Instant at, double perSecond) {
        return tenth(Math.max(0, Duration.between(from, at).toSeconds() * perSecond));
    }

    private static double tenth(double units) {
        return Math.rint(units * 10) / 10;
    }
}
