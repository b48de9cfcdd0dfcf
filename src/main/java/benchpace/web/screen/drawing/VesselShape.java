package benchpace.web.screen.drawing;

import benchpace.plan.Vessel;
import benchpace.plan.Vessel.Material;

/**
 * A vessel as it is drawn from the side, cut open, in its own proportions: so many units of the drawing to a
 * millimetre, the same across and upward. What is in it is drawn within {@link #inner}; its wall is one line of the
 * drawing's stroke that lies around that, whatever its own thickness. A glass is straight with a rounded base, a tin
 * straight with a rolled rim, ceramic tapers.
 *
 * <p>Two ways to find a place in it: {@link #x} and {@link #y} take what a cooling model speaks of, a share of the
 * radius and millimetres above the inner base; the rest are units. In a drawing y grows downward.
 *
 * @param scale units to a millimetre
 * @param centre x of the axis
 * @param base  y of the inner base
 * @param line  the stroke of wall and rim, units
 */
public record VesselShape(Vessel vessel, double scale, double centre, double base, double line) {
    /** A tin's rolled rim reaches so far out, in strokes. */
    private static final double ROLL = 0.8;

    /** Where a vessel is to stand: on the lower edge, in the middle. */
    public record Box(double left, double top, double width, double height) { }

    /**
     * As large as the box allows, strokes counted.
     *
     * @param line 0 or more, units
     * @throws IllegalArgumentException if the strokes leave no room in the box
     */
    public static VesselShape within(Box box, Vessel vessel, double line) {
        double across = box.width() - 2 * line * (vessel.material() == Material.TIN ? 1 + ROLL : 1);
        double upward = box.height() - 1.5 * line;
        if (!(across > 0 && upward > 0)) {
            throw new IllegalArgumentException("no room for a vessel in " + box);
        }
        double scale = Math.min(across / vessel.innerDiameterMillimetres(), upward / vessel.brimHeightMillimetres());
        return new VesselShape(vessel, scale, box.left() + box.width() / 2, box.top() + box.height() - line, line);
    }

    /** y of the brim. */
    public double brim() {
        return y(height());
    }

    /** x of the inner edge of the wall at the brim. */
    public double left() {
        return centre - radius() * scale;
    }

    public double right() {
        return centre + radius() * scale;
    }

    /** Inside, at the brim; units. */
    public double width() {
        return right() - left();
    }

    /** From the inner base to the brim; units. */
    public double depth() {
        return base - brim();
    }

    /**
     * x of a place in the vessel. Where the wall tapers or bends, places come nearer in the same proportion.
     *
     * @param share       of the inner radius, -1 at the wall's left to 1
     * @param millimetres above the inner base
     */
    public double x(double share, double millimetres) {
        return centre + share * halfWidth(millimetres);
    }

    /** @param millimetres above the inner base */
    public double y(double millimetres) {
        return base - millimetres * scale;
    }

    /** From the axis to the wall; units. @param millimetres above the inner base; held to base and brim */
    public double halfWidth(double millimetres) {
        return profile().x(Math.min(Math.max(millimetres, 0), height())) * scale;
    }

    /** The closed outline of all that is inside, up to the brim. */
    public String inner() {
        return filled(height());
    }

    /** The closed outline of what stands so high. @param millimetres above the inner base; held to base and brim */
    public String filled(double millimetres) {
        double level = Math.min(Math.max(millimetres, 0), height());
        return profile().closed(this, level);
    }

    /** The same. @param share of the inner height, 0 to 1 */
    public String filledTo(double share) {
        return filled(share * height());
    }

    /** y of a level. @param share of the inner height, 0 to 1 */
    public double level(double share) {
        return y(share * height());
    }

    /** The middle of the wall's stroke, from the left brim round the base to the right one; open at the top. */
    public String wall() {
        return profile().around(this, line / 2);
    }

    /** A tin's rolled rim, two short strokes; empty for glass and ceramic. */
    public String rim() {
        if (vessel.material() != Material.TIN) {
            return "";
        }
        double out = line / 2 + ROLL * line;
        return "M" + plain(left() - line / 2) + " " + plain(brim()) + "H" + plain(left() - out)
                + "M" + plain(right() + line / 2) + " " + plain(brim()) + "H" + plain(right() + out);
    }

    /** A number as drawings have them: to a tenth, without an idle nought. */
    public static String plain(double units) {
        double tenth = Math.rint(units * 10) / 10;
        return tenth == Math.rint(tenth) ? Long.toString((long) tenth) : Double.toString(tenth);
    }

    private double radius() {
        return vessel.innerDiameterMillimetres() / 2;
    }

    private double height() {
        return vessel.brimHeightMillimetres();
    }

    private VesselProfile profile() {
        return VesselProfile.of(vessel);
    }
}
