package benchpace.web.screen.drawing;

import static benchpace.web.screen.drawing.VesselShape.plain;

import benchpace.plan.Vessel;

/**
 * Half of a vessel's inner outline, millimetres from the axis by millimetres above the base: a straight side from the
 * brim down, and a corner that bends into the base as a parabola.
 *
 * @param brim   inner radius at the brim
 * @param foot   where the side, gone on with, would meet the base
 * @param height of the brim
 * @param corner how high and how far inward the bend reaches
 */
record VesselProfile(double brim, double foot, double height, double corner) {
    static VesselProfile of(Vessel vessel) {
        double radius = vessel.innerDiameterMillimetres() / 2;
        double height = vessel.brimHeightMillimetres();
        double least = Math.min(radius, height);
        return switch (vessel.material()) {
            case GLASS -> new VesselProfile(radius, radius, height, 0.34 * least);
            case TIN -> new VesselProfile(radius, radius, height, 0.1 * least);
            case CERAMIC -> new VesselProfile(radius, 0.86 * radius, height, 0.62 * least);
        };
    }

    /** @param above the base, 0 to the brim's height */
    double x(double above) {
        return above >= corner ? side(above) : bend(bent(above));
    }

    /** The region up to a level, as a path. @param level above the base, 0 to the brim's height */
    String closed(VesselShape shape, double level) {
        double from = Math.min(level, corner);
        double t = bent(from);
        double handleX = foot - corner * t; // where the tangent at the bend's beginning meets the base
        double flat = foot - corner;
        Outline outline = new Outline(shape, 0);
        outline.move(-x(level), level).line(-x(from), from).bend(-handleX, -flat, 0)
                .line(flat, 0).bend(handleX, x(from), from).line(x(level), level);
        return outline + "Z";
    }

    /** The whole outline at a distance outside it, open at the brim. @param out units of the drawing */
    String around(VesselShape shape, double out) {
        Outline outline = new Outline(shape, out);
        outline.move(-brim, height).line(-side(corner), corner).bend(-foot, -(foot - corner), 0)
                .line(foot - corner, 0).bend(foot, side(corner), corner).line(brim, height);
        return outline.toString();
    }

    private double side(double above) {
        return foot + (brim - foot) * above / height;
    }

    /** How far along the bend such a height is, 0 at its beginning and 1 at the base. */
    private double bent(double above) {
        return 1 - Math.sqrt(above / corner);
    }

    private double bend(double t) {
        return (1 - t) * (1 - t) * side(corner) + 2 * t * (1 - t) * foot + t * t * (foot - corner);
    }

    /** A path in units of the drawing. @param out how far outside it lies, units: sides aside, the base below */
    private static final class Outline {
        private final VesselShape shape;
        private final double out;
        private final StringBuilder path = new StringBuilder();

        Outline(VesselShape shape, double out) {
            this.shape = shape;
            this.out = out;
        }

        Outline move(double x, double above) {
            return add('M', x, above, out, 0);
        }

        Outline line(double x, double above) {
            return above == 0 ? add('L', x, above, 0, out) : add('L', x, above, out, 0);
        }

        /** From a side into the base, or the other way; the handle is where the two would meet, on the base. */
        Outline bend(double handleX, double x, double above) {
            add('Q', handleX, 0, out, out);
            return above == 0 ? add(' ', x, above, 0, out) : add(' ', x, above, out, 0);
        }

        private Outline add(char command, double x, double above, double aside, double below) {
            path.append(command).append(plain(shape.centre() + x * shape.scale() + Math.signum(x) * aside))
                    .append(' ').append(plain(shape.y(above) + below));
            return this;
        }

        @Override public String toString() {
            return path.toString();
        }
    }
}
