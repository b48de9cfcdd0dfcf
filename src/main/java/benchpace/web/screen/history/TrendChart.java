package benchpace.web.screen.history;

import benchpace.history.Dot;
import benchpace.history.Measure;
import benchpace.history.PastClass;
import benchpace.history.Series;
import benchpace.history.Trend;
import benchpace.words.Times;
import benchpace.words.TrendWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One question to past classes, drawn: time across, the figure upwards, a dot a class. Where a trend may be said a line
 * is drawn through the dots; else none is, so that no eye is led.
 *
 * @param id     names it on the page
 * @param ticks  levels of the figure
 * @param zero   height of nothing, where the figure goes below it; 0 otherwise
 * @param beyond the dots that lie far beyond all others, drawn at the edge
 * @param line   ends of the trend, empty if none may be said
 * @param words  what it says, in sentences
 */
public record TrendChart(String id, String title, String unit, List<Tick> ticks, int zero, List<Place> dots,
                         List<Place> beyond, String line, String first, String last, List<String> words) {
    public static final int WIDTH = 420;
    public static final int HEIGHT = 170;
    public static final int LEFT = 40;
    public static final int RIGHT = 408;
    public static final int TOP = 14;
    public static final int BOTTOM = 136;
    private static final double[] STEPS = {1, 2, 5, 10, 20, 30, 60, 120, 240, 480, 960};
    private static final int MOST_TICKS = 4;
    /** A dot is beyond the others if it is more than three times as high as nine in ten of them are at most. */
    private static final double BEYOND = 3;

    /** A level. */
    public record Tick(int y, String words) { }

    /** Where a dot is. */
    public record Place(int x, int y) { }

    public static TrendChart of(Measure measure, List<PastClass> classes, Times times) {
        Series series = measure.series(classes);
        return of("trend-" + measure.name().toLowerCase(java.util.Locale.ROOT), TrendWords.title(measure),
                TrendWords.unit(measure), series, TrendWords.of(measure, classes, series, times), times);
    }

    private static TrendChart of(String id, String title, String unit, Series series, List<String> words,
                                 Times times) {
        if (series.dots().isEmpty()) {
            return new TrendChart(id, title, unit, List.of(), 0, List.of(), List.of(), "", "", "", words);
        }
        Drawing drawing = new Drawing(series);
        Dot first = series.dots().get(0);
        Dot last = series.dots().get(series.dots().size() - 1);
        return new TrendChart(id, title, unit, drawing.ticks(), drawing.least < 0 ? drawing.y(0) : 0,
                drawing.places(false), drawing.places(true), drawing.line(series.trend(), first, last),
                times.dateOfYear(TrendWords.at(first)), times.dateOfYear(TrendWords.at(last)), words);
    }

    /** A single point is no drawing: it says what the row of its class says. */
    boolean draws() {
        return dots.size() + beyond.size() > 1;
    }

    private static final class Drawing {
        private final List<Dot> dots;
        private final double from;
        private final double until;
        private final double step;
        private final double least;
        private final double most;

        Drawing(Series series) {
            dots = series.dots();
            from = dots.get(0).day();
            until = Math.max(from + 1, dots.get(dots.size() - 1).day());
            double up = edge(dots.stream().mapToDouble(Dot::value));
            double down = edge(dots.stream().mapToDouble(d -> -d.value()));
            double span = up + down;
            step = Arrays.stream(STEPS).filter(s -> span <= s * MOST_TICKS).findFirst()
                    .orElseGet(() -> Math.ceil(span / MOST_TICKS));
            least = -step * Math.ceil(down / step);
            most = Math.max(step, step * Math.ceil(up / step));
        }

        /** As high as the highest of those above nothing, those far beyond left out. */
        private static double edge(DoubleStream values) {
            double[] above = values.map(v -> Math.max(0, v)).sorted().toArray();
            double usual = BEYOND * above[(int) Math.ceil(0.9 * above.length) - 1];
            double highest = above[above.length - 1];
            return usual > 0 ? Math.min(highest, usual) : highest;
        }

        int x(double day) {
            return (int) Math.round(LEFT + 6 + (RIGHT - LEFT - 12) * (day - from) / (until - from));
        }

        int y(double value) {
            double within = Math.max(least, Math.min(most, value));
            return (int) Math.round(BOTTOM - (BOTTOM - TOP) * (within - least) / (most - least));
        }

        List<Tick> ticks() {
            List<Tick> ticks = new ArrayList<>();
            for (double at = least; at <= most + step / 2; at += step) {
                ticks.add(new Tick(y(at), String.valueOf(Math.round(at))));
            }
            return ticks;
        }

        List<Place> places(boolean beyond) {
            return dots.stream().filter(d -> (d.value() > most || d.value() < least) == beyond)
                    .map(d -> new Place(x(d.day()), y(d.value()))).toList();
        }

        String line(Trend trend, Dot first, Dot last) {
            return trend.told() ? "M" + x(first.day()) + " " + y(trend.first()) + "L" + x(last.day()) + " "
                    + y(trend.last()) : "";
        }
    }
}
