package benchpace.web.screen.wall;

import static benchpace.web.screen.drawing.VesselShape.plain;

import benchpace.board.view.ClassView;
import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.SectionPoint;
import benchpace.cure.solver.SolidFront;
import benchpace.plan.Vessel;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.drawing.VesselShape;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A candle in its vessel, small, in millimetres, with the axis at x = 0 and the base of the wax at y = 0. The vessel
 * has the proportions of its plan, the wax its height, and what is drawn inside are the fronts as computed.
 *
 * @param id      of what clips the wax to its vessel, the same as nothing else on the page
 * @param viewBox the same for all candles of a class, so that they are drawn to one scale
 * @param line    the stroke of a vessel
 * @param wax     all of the wax
 * @param level   the line up to which it is filled, or is to be
 * @param setting what is less solid than 75 per cent; empty where nothing is, or nothing is computed
 * @param liquid  what is less solid than 25 per cent; the same
 * @param bar     across the brim, it holds the wick
 */
public record SmallCandle(String id, String viewBox, String line, String wall, String rim, String inner, String wax,
                          String level, String setting, String liquid, String wick, String bar) {
    private static final double USUAL_FILL = 0.7;
    /** Strokes, as shares of how wide the widest vessel is. */
    private static final double LINE = 0.05;
    private static final double BAR_BEYOND = 0.09;
    private static final double WICK_ABOVE = 0.1;
    private static final double MARGIN = 0.02;
    /** Finer than what is seen at this size: a share of the wax. */
    private static final double DETAIL = 0.03;
    /** Levels among those of a section. */
    private static final int SETTING = 2;
    private static final int LIQUID = 0;

    /** What the seats of a class pour into, to one scale. */
    static final class Vessels {
        private record Filled(Vessel vessel, double height) { }

        private final Map<Integer, Filled> bySeat = new LinkedHashMap<>();
        private final double widest;
        private final String viewBox;

        /** @param seats those shown; at least one */
        Vessels(ClassView view, Collection<Integer> seats) {
            seats.forEach(seat -> bySeat.put(seat, filled(view, seat)));
            widest = bySeat.values().stream().mapToDouble(f -> f.vessel.innerDiameterMillimetres()).max().orElseThrow();
            double highest = bySeat.values().stream().mapToDouble(f -> f.vessel.brimHeightMillimetres()).max()
                    .orElseThrow();
            double half = widest * (0.5 + LINE + BAR_BEYOND + MARGIN);
            double above = highest + widest * (WICK_ABOVE + MARGIN);
            viewBox = plain(-half) + " " + plain(-above) + " " + plain(2 * half) + " "
                    + plain(above + widest * (LINE + MARGIN));
        }

        private static Filled filled(ClassView view, int seat) {
            return Drawing.candle(view, seat).map(c -> new Filled(c.vessel(), c.fillHeightMillimetres()))
                    .orElseGet(() -> new Filled(Drawing.USUAL, Drawing.USUAL.brimHeightMillimetres() * USUAL_FILL));
        }

        SmallCandle of(int seat, Optional<CandleSection> section) {
            Filled filled = bySeat.get(seat);
            VesselShape shape = new VesselShape(filled.vessel, 1, 0, 0, widest * LINE);
            double height = Math.min(section.map(CandleSection::heightMillimetres).orElse(filled.height),
                    filled.vessel.brimHeightMillimetres());
            double bar = widest * (LINE + BAR_BEYOND);
            return new SmallCandle("wax-" + seat, viewBox, plain(shape.line()), shape.wall(), shape.rim(),
                    shape.inner(), shape.filled(height),
                    "M" + plain(shape.x(-1, height)) + " " + plain(shape.y(height)) + "H" + plain(shape.x(1, height)),
                    section.map(s -> path(s.fronts().get(SETTING), shape, height)).orElse(""),
                    section.map(s -> path(s.fronts().get(LIQUID), shape, height)).orElse(""),
                    "M0 " + plain(shape.brim() - widest * WICK_ABOVE) + "V" + plain(shape.y(0.12 * height)),
                    "M" + plain(shape.left() - bar) + " " + plain(shape.brim() - shape.line() / 2)
                            + "H" + plain(shape.right() + bar));
        }
    }

    /** The closed outlines of both halves. */
    private static String path(SolidFront front, VesselShape shape, double height) {
        StringBuilder path = new StringBuilder();
        for (List<SectionPoint> outline : front.outlines()) {
            for (int side = 1; side >= -1; side -= 2) {
                SectionPoint last = outline.get(0);
                path.append('M').append(at(last, side, shape, height));
                for (SectionPoint p : outline) {
                    if (Math.hypot(p.r() - last.r(), p.z() - last.z()) > DETAIL) {
                        path.append('L').append(at(p, side, shape, height));
                        last = p;
                    }
                }
                path.append('Z');
            }
        }
        return path.toString();
    }

    private static String at(SectionPoint p, int side, VesselShape shape, double height) {
        double above = p.z() * height;
        return plain(shape.x(side * p.r(), above)) + " " + plain(shape.y(above));
    }

    /** A square round the middle of 20 by 20, as the data of a path; empty for none. */
    static String square(double side) {
        return side < 0.05 ? "" : "M" + plain(10 - side / 2) + " " + plain(10 - side / 2) + "h" + plain(side)
                + "v" + plain(side) + "h" + plain(-side) + "z";
    }
}
