package benchpace.web.screen.instructor;

import benchpace.board.pacing.PaceLines;
import benchpace.board.pacing.SeatFlag;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The string-line chart, ready to be drawn: time across, steps up, one line a seat. Flagged lines come last, on top,
 * and carry their numbers at the right edge; the others are quiet. It moves on by half minutes, so that it is drawn
 * anew no oftener.
 *
 * @param path  the way to the last candle, where the class is looked back on; else empty
 * @param words the same for those who do not see it
 */
public record LinesChart(int width, int height, int left, int right, int top, int bottom, List<Rung> rungs,
                         List<Tick> ticks, List<Line> lines, List<Tag> tags, String path, String words) {
    private static final int TOP = 8;
    private static final int FOOT = 18;
    private static final int TAGS = 72;
    private static final int NARROW_TAGS = 44;
    private static final int BROAD_TAGS = 104;
    private static final int NARROW = 500;
    private static final int BROAD = 1000;
    private static final int NAMES = 190;
    private static final int NARROW_NAMES = 112;
    private static final double LETTER = 7;
    /** Two lines of a name stand so far apart, and so high is what they need of their own. */
    private static final int NAME_LINE = 12;
    /** Of the letters of a tag, which are larger and bold: a digit, what stands between two numbers, an ellipsis. */
    private static final double DIGIT = 9.8;
    private static final double COMMA = 10.4;
    private static final double ELLIPSIS = 14;
    private static final int TAG_GAP = 6;
    /** The chart grows upwards with the class, from so many steps on. */
    private static final int LEAST_RUNGS = 4;
    private static final int LINE_HEIGHT = 13;
    private static final int LETTERS_OF_A_TICK = 70;
    private static final List<Integer> TICK_MINUTES = List.of(5, 10, 15, 30, 60, 120);
    private static final Duration SHORTEST = Duration.ofMinutes(10);
    private static final long HALF_MINUTE = 30;

    /**
     * A step's level.
     *
     * @param name empty where there is no room for it
     * @param more what of the name stands on a second line; may be empty
     */
    public record Rung(int y, String name, String more) {
        public Rung(int y, String name) {
            this(y, name, "");
        }

        /** Where the first line of the name stands: both together in the middle of the level. */
        public int nameY() {
            return more.isEmpty() ? y + 4 : y + 4 - NAME_LINE / 2;
        }

        public int moreY() {
            return nameY() + NAME_LINE;
        }
    }

    public record Tick(int x, String clock) { }

    /** One seat's line. @param mark {@code quiet}, {@code slipping} or {@code behind} */
    public record Line(int seat, String mark, String points, String title) { }

    /** The numbers of the flagged seats whose lines end at this height. */
    public record Tag(int x, int y, String seats, String mark) { }

    public static LinesChart of(ClassView view, Times times) {
        LinesPlace place = LinesPlace.of(view);
        return new Drawing(view, place.width(), place.height()).chart(times, List.of());
    }

    /** The same with the way to the last candle. */
    public static LinesChart of(ClassView view, int width, int height, List<PaceLines.Point> path, Times times) {
        return new Drawing(view, width, height).chart(times, path);
    }

    /** How wide a tag is drawn at most, whatever the device's font. */
    static double tagWidth(String tag) {
        return tag.chars().mapToDouble(c -> Character.isDigit(c) ? DIGIT : c == ',' ? COMMA : c == ' ' ? 0 : ELLIPSIS)
                .sum();
    }

    public boolean empty() {
        return lines.isEmpty();
    }

    /** One chart in the drawing. */
    private static final class Drawing {
        private final ClassView view;
        private final PaceLines chart;
        private final int width;
        private final int left;
        private final int right;
        private final int bottom;
        private final int height;
        private final Instant from;
        private final Instant edge;
        private final Instant until;
        private final int top;

        Drawing(ClassView view, int width, int height) {
            this.view = view;
            this.chart = view.lines();
            this.width = width;
            this.height = height;
            this.left = width < NARROW ? NARROW_NAMES : NAMES;
            this.right = width - (width < NARROW ? NARROW_TAGS : width > BROAD ? BROAD_TAGS : TAGS);
            this.bottom = height - FOOT;
            this.from = chart.from();
            this.edge = edge();
            Instant least = from.plus(SHORTEST);
            this.until = edge.isAfter(least) ? edge : least;
            int reached = chart.lines().stream().mapToInt(Drawing::level).max().orElse(0);
            this.top = Math.max(1, Math.min(chart.steps().size(), Math.max(LEAST_RUNGS, reached + 1)));
        }

        /** The half minute that has passed, or the last tap if that is younger. */
        private Instant edge() {
            long passed = Math.floorDiv(chart.until().getEpochSecond(), HALF_MINUTE) * HALF_MINUTE;
            Instant tapped = chart.lines().stream().flatMap(l -> l.points().stream()).map(PaceLines.Point::at)
                    .filter(at -> at.isBefore(chart.until())).max(Comparator.naturalOrder()).orElse(from);
            Instant floor = Instant.ofEpochSecond(passed);
            return floor.isAfter(tapped) ? floor : tapped;
        }

        LinesChart chart(Times times, List<PaceLines.Point> path) {
            boolean begun = view.stage() != ClassView.Stage.BEFORE;
            List<Line> lines = new ArrayList<>();
            if (begun) {
                chart.lines().stream().sorted(Comparator.comparing(l -> mark(l.seat()).equals("quiet") ? 0 : 1))
                        .forEach(l -> lines.add(line(l)));
            }
            return new LinesChart(width, height, left, right, TOP, bottom, rungs(), begun ? ticks(times) : List.of(),
                    lines, begun ? tags() : List.of(), points(path),
                    begun ? words() : "The lines begin with the class.");
        }

        private int x(Instant at) {
            double share = (double) Duration.between(from, at).toMillis() / Duration.between(from, until).toMillis();
            return (int) Math.round(left + Math.min(1, Math.max(0, share)) * (right - left));
        }

        private int y(int level) {
            return (int) Math.round(bottom - (double) level / top * (bottom - TOP));
        }

        private List<Rung> rungs() {
            int count = Math.min(top, chart.steps().size());
            int every = Math.max(1, (int) Math.ceil(LINE_HEIGHT * top / (double) (bottom - TOP)));
            List<Rung> rungs = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                boolean named = (count - 1 - i) % every == 0;
                rungs.add(named ? rung(y(i + 1), chart.steps().get(i), every * (bottom - TOP) / top)
                        : new Rung(y(i + 1), ""));
            }
            return rungs;
        }

        /** On two lines if one is too short and two have room; only a name too long for both is shortened. */
        private Rung rung(int y, String name, int apart) {
            int letters = (int) ((left - 8) / LETTER);
            int space = name.lastIndexOf(' ', letters);
            return name.length() <= letters || space < 0 || apart < 2 * NAME_LINE
                    ? new Rung(y, shortened(name, letters))
                    : new Rung(y, name.substring(0, space), shortened(name.substring(space + 1), letters));
        }

        private static String shortened(String name, int letters) {
            return name.codePointCount(0, name.length()) <= letters ? name
                    : name.substring(0, name.offsetByCodePoints(0, letters - 1)).stripTrailing() + "\u2026";
        }

        private List<Tick> ticks(Times times) {
            long minutes = Math.max(1, Duration.between(from, until).toMinutes());
            int most = Math.max(2, (right - left) / LETTERS_OF_A_TICK);
            int every = TICK_MINUTES.stream().filter(m -> minutes / m <= most).findFirst()
                    .orElse(TICK_MINUTES.get(TICK_MINUTES.size() - 1));
            List<Tick> ticks = new ArrayList<>();
            for (Instant at = Times.next(every, from); !at.isAfter(until); at = at.plus(Duration.ofMinutes(every))) {
                ticks.add(new Tick(x(at), times.clock(at)));
            }
            return ticks;
        }

        private String mark(int seat) {
            return view.seat(seat).flag().map(f -> f.level() == SeatFlag.Level.BEHIND ? "behind" : "slipping")
                    .orElse("quiet");
        }

        private Line line(PaceLines.Line line) {
            return new Line(line.seat(), mark(line.seat()), points(line.points()),
                    title(view.seat(line.seat()), level(line)));
        }

        private String points(List<PaceLines.Point> points) {
            return points.stream()
                    .map(p -> x(p.at().isBefore(chart.until()) ? p.at() : edge) + "," + y(p.level()))
                    .collect(Collectors.joining(" "));
        }

        private static int level(PaceLines.Line line) {
            return line.points().isEmpty() ? 0 : line.points().get(line.points().size() - 1).level();
        }

        private String title(SeatView seat, int level) {
            String name = seat.name().isEmpty() ? "" : ", " + seat.name();
            String at = seat.stepName().isEmpty() ? "" : ", at " + seat.stepName();
            String flag = mark(seat.seat()).equals("quiet") ? "" : ", " + mark(seat.seat());
            return "Seat " + seat.seat() + name + ": " + level + " of " + chart.steps().size() + " steps done" + at
                    + flag;
        }

        /**
         * Flagged seats on one level share one tag, the loudest of them giving its colour, and so do those on levels
         * too near for two lines of text.
         */
        private List<Tag> tags() {
            Map<Integer, List<PaceLines.Line>> byLevel = new TreeMap<>();
            chart.lines().stream().filter(l -> !mark(l.seat()).equals("quiet"))
                    .forEach(l -> byLevel.computeIfAbsent(tagLevel(level(l), byLevel),
                            n -> new ArrayList<>()).add(l));
            List<Tag> tags = new ArrayList<>();
            byLevel.forEach((level, lines) -> {
                boolean behind = lines.stream().anyMatch(l -> mark(l.seat()).equals("behind"));
                tags.add(new Tag(x(edge) + TAG_GAP, y(level),
                        numbers(lines.stream().map(PaceLines.Line::seat).toList()),
                        behind ? "behind" : "slipping"));
            });
            return tags;
        }

        private int tagLevel(int level, Map<Integer, ?> used) {
            return used.keySet().stream().filter(other -> Math.abs(y(other) - y(level)) < LINE_HEIGHT)
                    .min(Comparator.comparing(other -> Math.abs(other - level))).orElse(level);
        }

        /** As many of the numbers as stand beside the chart whole, three at most. */
        private String numbers(List<Integer> seats) {
            int most = Math.min(seats.size(), width < NARROW ? 2 : 3);
            String tag = numbers(seats, most);
            while (most > 1 && tagWidth(tag) > width - right - TAG_GAP) {
                most--;
                tag = numbers(seats, most);
            }
            return tag;
        }

        private static String numbers(List<Integer> seats, int most) {
            return seats.stream().limit(most).map(String::valueOf).collect(Collectors.joining(", "))
                    + (seats.size() > most ? "\u2026" : "");
        }

        private String words() {
            List<Integer> flagged = chart.lines().stream().map(PaceLines.Line::seat)
                    .filter(seat -> !mark(seat).equals("quiet")).toList();
            Map<Integer, List<Integer>> byLevel = new TreeMap<>(Comparator.reverseOrder());
            chart.lines().forEach(l -> byLevel.computeIfAbsent(level(l), n -> new ArrayList<>()).add(l.seat()));
            String levels = byLevel.entrySet().stream()
                    .map(e -> Phrases.seats(e.getValue(), 6) + " " + (e.getValue().size() == 1 ? "has" : "have")
                            + " done " + e.getKey())
                    .collect(Collectors.joining("; "));
            return "Steps done, of " + chart.steps().size() + ": " + levels + "."
                    + (flagged.isEmpty() ? "" : " The flat lines are those of " + Phrases.seats(flagged, 6) + ".");
        }
    }
}
