package benchpace.web.screen.shell;

import benchpace.board.cooling.CutAway;
import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.SectionPoint;
import benchpace.cure.solver.SolidFront;
import benchpace.words.CutWords;
import java.util.ArrayList;
import java.util.List;

/**
 * A candle cut open, as an SVG in millimetres: the axis at x = 0, the base of the wax at y = 0, upwards negative. Zones
 * differ by pattern and by how dark they are, not by hue alone.
 *
 * @param id      begins the ids within the drawing, so that two may stand on one page
 * @param zones   where the wax is less solid, each on top of the one before
 * @param front   the line where the wax is half solid
 * @param vessel  the cut wall and base
 * @param wall    thickness as drawn, so that the thinnest tin can be seen
 * @param candle  what it is
 * @param caption whose candle it is and how long ago it was poured
 * @param solid   "about 45 % set"
 * @param words   the same as a text, for who cannot see the drawing
 */
public record CutDrawing(String id, String viewBox, double radius, double height, double outer, double wall,
                         List<Zone> zones, String front, String vessel, String wick, String candle, String caption,
                         String solid, String words) {
    private static final double THINNEST_WALL = 1.6;
    private static final double RIM_SHOWN = 12;
    private static final double MARGIN = 5;
    private static final double TABLE = 5;

    /** @param kind {@code nearly}, {@code half}, {@code soft} or {@code liquid} */
    public record Zone(String kind, String path) { }

    public static CutDrawing of(CutAway cut, String id) {
        CandleSection section = cut.section();
        double r = section.radiusMillimetres();
        double h = section.heightMillimetres();
        double wall = Math.max(cut.vessel().wallMillimetres(), THINNEST_WALL);
        double rim = Math.max(h + 1, Math.min(cut.vessel().brimHeightMillimetres(), h + RIM_SHOWN));
        List<Zone> zones = new ArrayList<>();
        String[] kinds = {"liquid", "soft", "half", "nearly"};
        for (int i = kinds.length - 1; i >= 0; i--) {
            String path = filled(section.fronts().get(i), r, h);
            if (!path.isEmpty()) {
                zones.add(new Zone(kinds[i], path));
            }
        }
        double outer = r + wall;
        String box = plain(-outer - MARGIN) + " " + plain(-rim - MARGIN) + " " + plain(2 * (outer + MARGIN)) + " "
                + plain(rim + wall + MARGIN + TABLE);
        return new CutDrawing(id, box, r, h, outer, wall, List.copyOf(zones), line(section.fronts().get(1), r, h),
                vessel(r, wall, rim), "M0 " + plain(-rim + 2) + "V0", cut.candle(),
                CutWords.caption(cut), CutWords.solid(section), CutWords.described(cut));
    }

    /** The closed outlines of both halves. */
    private static String filled(SolidFront front, double r, double h) {
        StringBuilder path = new StringBuilder();
        for (List<SectionPoint> outline : front.outlines()) {
            for (int side = 1; side >= -1; side -= 2) {
                char command = 'M';
                for (SectionPoint p : outline) {
                    path.append(command).append(at(p, side * r, h));
                    command = 'L';
                }
                path.append('Z');
            }
        }
        return path.toString();
    }

    /** The outline less what only follows the axis or the edge of the wax: the front itself. */
    private static String line(SolidFront front, double r, double h) {
        StringBuilder path = new StringBuilder();
        for (List<SectionPoint> outline : front.outlines()) {
            SectionPoint from = outline.get(outline.size() - 1);
            for (SectionPoint to : outline) {
                if (!alongEdge(from.r(), to.r()) && !alongEdge(from.z(), to.z())) {
                    for (int side = 1; side >= -1; side -= 2) {
                        path.append('M').append(at(from, side * r, h)).append('L').append(at(to, side * r, h));
                    }
                }
                from = to;
            }
        }
        return path.toString();
    }

    private static boolean alongEdge(double a, double b) {
        return a < 1e-6 && b < 1e-6 || a > 1 - 1e-6 && b > 1 - 1e-6;
    }

    private static String at(SectionPoint p, double r, double h) {
        return plain(p.r() * r) + " " + plain(-p.z() * h);
    }

    private static String vessel(double r, double wall, double rim) {
        double outer = r + wall;
        return "M" + plain(-outer) + " " + plain(-rim) + "V" + plain(wall) + "H" + plain(outer) + "V" + plain(-rim)
                + "H" + plain(r) + "V0H" + plain(-r) + "V" + plain(-rim) + "Z";
    }

    /** To a tenth of a millimetre. */
    private static String plain(double millimetres) {
        double tenth = Math.rint(millimetres * 10) / 10;
        return tenth == Math.rint(tenth) ? Long.toString((long) tenth) : Double.toString(tenth);
    }
}
