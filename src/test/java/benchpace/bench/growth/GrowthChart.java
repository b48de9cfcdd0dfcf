package benchpace.bench.growth;

import benchpace.bench.growth.Curve.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Curves as a drawing to print, black on white: a panel for each thing there is more of, both ways by powers, so that a
 * straight line of slope one is what grows in proportion. Beside each line stand its name and its exponent; the thin
 * line is n log n.
 */
public final class GrowthChart {
    private static final int WIDTH = 660;
    private static final int HEIGHT = 330;
    private static final int LEFT = 75;
    private static final int RIGHT = 215;
    private static final int TOP = 40;
    private static final int BOTTOM = 50;
    private static final int LINE = 15;
    private static final List<String> DASHES = List.of("", "7 4", "2 3", "10 3 2 3");

    private final StringBuilder svg = new StringBuilder();

    /** @param of what there is more of @param curves over it, four at most */
    public record Panel(String of, List<Curve> curves) { }

    /** @param head on what it was taken, line by line */
    public static String of(String head, List<Panel> panels) {
        GrowthChart chart = new GrowthChart();
        List<String> lines = head.lines().toList();
        int top = 30 + LINE * lines.size();
        int rows = (panels.size() + 1) / 2;
        chart.svg.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" "
                + "font-family=\"sans-serif\" font-size=\"12\"><rect width=\"100%%\" height=\"100%%\" "
                + "fill=\"white\"/>%n", 2 * WIDTH, top + rows * HEIGHT));
        for (int n = 0; n < lines.size(); n++) {
            chart.text(20, 25 + n * LINE, "start", lines.get(n));
        }
        for (int n = 0; n < panels.size(); n++) {
            chart.svg.append(String.format(Locale.ROOT, "<g transform=\"translate(%d %d)\">%n", n % 2 * WIDTH,
                    top + n / 2 * HEIGHT));
            chart.panel(panels.get(n));
            chart.svg.append("</g>\n");
        }
        return chart.svg.append("</svg>\n").toString();
    }

    /** Where a value stands between two others, by its logarithm, on a line from one place to another. */
    private record Scale(double low, double high, double from, double to) {
        double at(double value) {
            return from + (to - from) * Math.log(value / low) / Math.log(high / low);
        }
    }

    private void panel(Panel panel) {
        List<Point> all = panel.curves().stream().flatMap(curve -> curve.points().stream()).toList();
        List<Point> one = panel.curves().get(0).points();
        double low = all.stream().mapToDouble(Point::millis).min().orElseThrow();
        double high = all.stream().mapToDouble(Point::millis).max().orElseThrow();
        Scale x = new Scale(one.get(0).n(), one.get(one.size() - 1).n(), LEFT, WIDTH - RIGHT);
        Scale y = new Scale(Math.pow(10, Math.floor(Math.log10(low))), Math.pow(10, Math.ceil(Math.log10(high * 1.01))),
                HEIGHT - BOTTOM, TOP);
        for (double tick = y.low(); tick <= y.high() * 1.01; tick *= 10) {
            line(LEFT, y.at(tick), WIDTH - RIGHT, y.at(tick), "#ccc");
            text(LEFT - 6, y.at(tick) + 4, "end", number(tick) + " ms");
        }
        for (Point p : one) {
            line(x.at(p.n()), TOP, x.at(p.n()), HEIGHT - BOTTOM, "#eee");
            text(x.at(p.n()), HEIGHT - BOTTOM + 16, "middle", number(p.n()));
        }
        text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - BOTTOM + 34, "middle", panel.of());
        for (int n = 0; n < panel.curves().size(); n++) {
            curve(panel.curves().get(n), DASHES.get(n), x, y);
        }
        names(panel.curves(), y);
    }

    /** Beside the last point of each, or a line below the name above it. */
    private void names(List<Curve> curves, Scale y) {
        double above = 0;
        for (Curve curve : curves.stream().sorted(Comparator.comparingDouble(c -> -last(c).millis())).toList()) {
            above = Math.max(y.at(last(curve).millis()) + 4, above + LINE);
            text(WIDTH - RIGHT + 8, above, "start", String.format(Locale.ROOT, "%s, power %.2f", curve.cost(),
                    curve.exponent()));
        }
    }

    private static Point last(Curve curve) {
        return curve.points().get(curve.points().size() - 1);
    }

    private void curve(Curve curve, String dashes, Scale x, Scale y) {
        List<Point> points = curve.points();
        Point middle = points.get(points.size() / 2);
        path(points, x, y, "stroke=\"black\" stroke-width=\"2\" stroke-dasharray=\"" + dashes + "\"");
        double unit = middle.millis() / (middle.n() * Math.log(middle.n() + 1));
        path(points.subList(points.size() / 2, points.size()).stream()
                .map(p -> new Point(p.n(), unit * p.n() * Math.log(p.n() + 1)))
                .filter(p -> p.millis() <= y.high()).toList(), x, y, "stroke=\"#999\" stroke-width=\"1\"");
        for (Point p : points) {
            svg.append(String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\"/>%n", x.at(p.n()),
                    y.at(p.millis())));
        }
    }

    private void path(List<Point> points, Scale x, Scale y, String look) {
        svg.append("<polyline fill=\"none\" ").append(look).append(" points=\"").append(points.stream()
                .map(p -> String.format(Locale.ROOT, "%.1f,%.1f", x.at(p.n()), y.at(p.millis())))
                .collect(Collectors.joining(" "))).append("\"/>\n");
    }

    private void line(double x1, double y1, double x2, double y2, String colour) {
        svg.append(String.format(Locale.ROOT, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>%n",
                x1, y1, x2, y2, colour));
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y,
                anchor, words.replace("&", "&amp;").replace("<", "&lt;")));
    }

    private static String number(double value) {
        return value >= 1 ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
