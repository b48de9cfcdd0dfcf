package benchpace.web.screen.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * Curves over the minutes from the pour, as an SVG. Lines differ by their dashes and bear their letter.
 *
 * @param title  what is drawn
 * @param words  the same as a text, for who cannot see it
 * @param waitAt where the class's wait ends, across; negative if that is not drawn
 */
public record CureChart(String id, String title, String words, List<Tick> across, List<Tick> up, List<Line> lines,
                        double waitAt) {
    public static final int WIDTH = 640;
    public static final int HEIGHT = 300;
    private static final double LEFT = 52;
    private static final double RIGHT = 20;
    private static final double TOP = 14;
    private static final double BOTTOM = 48;

    /** A mark on an axis, where it stands and what it says. */
    public record Tick(double at, String words) { }

    /** One candle's course; its letter stands at the given place. */
    public record Line(String letter, String path, double letterX, double letterY) { }

    /** A course to draw. @param until the last minute that is known of it */
    public record Course(String letter, DoubleUnaryOperator value, double until) { }

    static CureChart of(String id, String title, String words, List<Course> courses, double minutes, double low,
                        double high, double step, String unit, double wait) {
        List<Tick> across = new ArrayList<>();
        double every = minutes > 240 ? 60 : 30;
        for (double m = 0; m <= minutes + 1e-9; m += every) {
            across.add(new Tick(x(m, minutes), Long.toString(Math.round(m))));
        }
        List<Tick> up = new ArrayList<>();
        for (double v = low; v <= high + 1e-9; v += step) {
            up.add(new Tick(y(v, low, high), Math.round(v) + unit));
        }
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < courses.size(); i++) {
            lines.add(line(courses.get(i), i, courses.size(), minutes, low, high));
        }
        return new CureChart(id, title, words, List.copyOf(across), List.copyOf(up), List.copyOf(lines),
                wait > 0 && wait <= minutes ? x(wait, minutes) : -1);
    }

    private static Line line(Course course, int index, int of, double minutes, double low, double high) {
        StringBuilder path = new StringBuilder();
        double end = Math.min(minutes, course.until());
        double step = end / 200;
        for (int k = 0; k <= 200; k++) {
            double v = Math.min(Math.max(course.value().applyAsDouble(k * step), low), high);
            path.append(k == 0 ? 'M' : 'L').append(plain(x(k * step, minutes))).append(' ')
                    .append(plain(y(v, low, high)));
        }
        // letters stand apart along the lines, so that lines close together can still be told apart
        double at = end * (index + 1.0) / (of + 2.0) * 0.8;
        double v = Math.min(Math.max(course.value().applyAsDouble(at), low), high);
        return new Line(course.letter(), path.toString(), tenth(x(at, minutes)), tenth(y(v, low, high)));
    }

    private static double x(double minute, double minutes) {
        return tenth(LEFT + minute / minutes * (WIDTH - LEFT - RIGHT));
    }

    private static double y(double value, double low, double high) {
        return tenth(HEIGHT - BOTTOM - (value - low) / (high - low) * (HEIGHT - TOP - BOTTOM));
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    public double left() {
        return LEFT;
    }

    public double right() {
        return WIDTH - RIGHT;
    }

    public double top() {
        return TOP;
    }

    public double bottom() {
        return HEIGHT - BOTTOM;
    }
}
