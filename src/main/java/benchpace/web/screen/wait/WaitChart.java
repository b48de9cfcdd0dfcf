package benchpace.web.screen.wait;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.PartView;
import benchpace.board.waiting.WaitView.StripView;
import benchpace.breaks.Assignment.Status;
import benchpace.files.Words;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The wait of each seat as a strip of time, drawn as an SVG whose attributes are all here. Its unit is a pixel of a
 * drawing {@value #WIDTH} wide.
 *
 * @param now where the present minute is; negative if outside
 */
public record WaitChart(int height, List<Mark> marks, List<Row> rows, double now, String described) {
    public static final int WIDTH = 1180;
    static final int ROW = 46;
    public static final int HEAD = 34;
    private static final int LEFT = 64;
    private static final int RIGHT = 172;
    private static final int MOST_MINUTES = 240;
    private static final double LETTER = 8.8;

    /** Half the width of a clock time, and the room that the headings beside the strips leave it. */
    private static final double HALF_CLOCK = 22;
    /** In a row, where the labels of its parts stand; the letters of 16 px reach 5 px below that. */
    public static final int BASELINE = 23;
    /** In a row, the tip of the diamond of the ready moment, which lies below all words. */
    public static final int DIAMOND_TOP = 30;
    private static final double INSET = 6;

    /** A line at a time of day. @param clockX the middle of its clock time, moved aside for a heading */
    public record Mark(double x, double clockX, String clock) { }

    /**
     * One seat.
     *
     * @param waitX    where its wait begins
     * @param readyX   where its candle's range begins
     * @param idle     "4 min", of minutes with nothing to do in the whole wait
     * @param instead  how much it would be first come, first served
     * @param spoken   the strip in words
     */
    public record Row(int seat, int y, double waitX, double waitWidth, double readyX, double readyWidth, double likelyX,
                      boolean poured, List<Bar> bars, String idle, String instead, String spoken) { }

    /**
     * One part.
     *
     * @param labelX where its label begins
     * @param label  what fits into it; may be empty
     * @param looks  classes: its kind and its progress
     */
    public record Bar(double x, double width, double labelX, String activity, String label, String looks,
                      String title) { }

    private record Scale(Instant from, double perMinute) {
        double x(Instant at) {
            double x = LEFT + Duration.between(from, at).toSeconds() / 60.0 * perMinute;
            return Math.round(Math.max(LEFT, Math.min(WIDTH - RIGHT, x)) * 10) / 10.0;
        }
    }

    public static Optional<WaitChart> of(ClassView view, Times times) {
        WaitView wait = view.waiting();
        if (wait.strips().isEmpty()) {
            return Optional.empty();
        }
        Instant at = wait.plannedAt().orElse(view.now());
        Instant from = Times.next(5, wait.strips().stream().map(StripView::freeFrom).min(Instant::compareTo)
                .orElseThrow().minus(Duration.ofMinutes(5)));
        Instant until = Times.next(5, wait.strips().stream().flatMap(WaitChart::ends).max(Instant::compareTo)
                .orElseThrow());
        long minutes = Math.max(30, Math.min(MOST_MINUTES, Duration.between(from, until).toMinutes()));
        Scale scale = new Scale(from, (WIDTH - LEFT - RIGHT) / (double) minutes);
        List<Row> rows = new ArrayList<>();
        for (StripView strip : wait.strips()) {
            rows.add(row(view, strip, HEAD + rows.size() * ROW, scale, times));
        }
        boolean inside = !at.isBefore(from) && !at.isAfter(from.plus(Duration.ofMinutes(minutes)));
        return Optional.of(new WaitChart(HEAD + rows.size() * ROW + 6, marks(from, minutes, scale, times), rows,
                inside ? scale.x(at) : -1, "The wait of each seat as a strip of time, from " + times.clock(from)
                        + " to " + times.clock(from.plus(Duration.ofMinutes(minutes))) + ". The same in words below."));
    }

    private static java.util.stream.Stream<Instant> ends(StripView strip) {
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(strip.ready().until(), strip.until()),
                strip.parts().stream().map(PartView::until));
    }

    private static List<Mark> marks(Instant from, long minutes, Scale scale, Times times) {
        int step = minutes > 150 ? 30 : minutes > 75 ? 15 : 10;
        List<Mark> marks = new ArrayList<>();
        for (Instant at = Times.next(step, from); !at.isAfter(from.plus(Duration.ofMinutes(minutes)));
                at = at.plus(Duration.ofMinutes(step))) {
            double x = scale.x(at);
            double clock = Math.max(LEFT + HALF_CLOCK, Math.min(WIDTH - RIGHT - HALF_CLOCK, x));
            marks.add(new Mark(x, clock, times.clock(at)));
        }
        return marks;
    }

    private static Row row(ClassView view, StripView strip, int y, Scale scale, Times times) {
        SaidRange said = said(view, strip);
        double wait = scale.x(strip.freeFrom());
        double ready = scale.x(said.from());
        double width = Math.max(0, scale.x(said.until()) - ready);
        double likely = scale.x(strip.ready().likely());
        List<Bar> bars = strip.parts().stream().map(p -> bar(p, scale, times)).toList();
        return new Row(strip.seat(), y, wait, Math.max(0, scale.x(strip.until()) - wait), ready, width, likely,
                strip.poured(), bars, strip.wholeIdle() + " min", strip.idleUnplanned() + " min",
                spoken(view, strip, times));
    }

    private static Bar bar(PartView part, Scale scale, Times times) {
        double x = scale.x(part.from());
        double width = Math.max(2, scale.x(part.until()) - x);
        String kind = Words.of(part.kind());
        String progress = part.status() == Status.DONE ? " part--done"
                : part.status() == Status.UNDER_WAY ? " part--now"
                : part.status() == Status.EXPECTED ? " part--expected" : "";
        return new Bar(x, width, x + INSET, part.activity(), label(part.name(), width - 1.5 * INSET),
                "part--" + kind + progress, part.name() + ", " + span(part, times));
    }

    /** The name, or as much of it as can be read, or nothing. */
    private static String label(String name, double width) {
        int letters = (int) (width / LETTER);
        if (name.length() <= letters) {
            return name;
        }
        String first = name.split(" ")[0];
        return first.length() <= letters ? first : letters >= 4 ? name.substring(0, letters - 1).strip() + "…" : "";
    }

    private static String span(PartView part, Times times) {
        return part.status() == Status.EXPECTED ? "about " + times.roughly(part.from()) + ", after the hand test"
                : times.clock(part.from()) + " to " + times.clock(part.until());
    }

    private static String spoken(ClassView view, StripView strip, Times times) {
        StringBuilder words = new StringBuilder();
        for (PartView part : strip.parts()) {
            String before = switch (part.status()) {
                case DONE -> "had ";
                case UNDER_WAY -> "now ";
                case PLANNED -> "";
                case EXPECTED -> "";
            };
            words.append(words.isEmpty() ? "" : "; ").append(before).append(part.name()).append(' ')
                    .append(span(part, times));
        }
        return (words.isEmpty() ? "nothing planned" : words) + candle(view, strip, times) + "; "
                + strip.wholeIdle() + " min with nothing to do, unplanned " + strip.idleUnplanned() + " min.";
    }

    /** Of a candle that a hand has decided on nothing is said. */
    private static String candle(ClassView view, StripView strip, Times times) {
        return clock(view, strip).filter(CandleClock::settled).isPresent() ? "; candle set"
                : "; candle ready about " + times.said(said(view, strip));
    }

    /** What every screen says of the candle that the seat waits for; before its pour, what is to be expected. */
    private static SaidRange said(ClassView view, StripView strip) {
        return clock(view, strip).map(CandleClock::said).orElseGet(() -> SaidRange.of(strip.ready()));
    }

    private static Optional<CandleClock> clock(ClassView view, StripView strip) {
        SeatView seat = view.seat(strip.seat());
        return seat.sharesWith().map(view::seat).orElse(seat).candle();
    }
}
