package benchpace.cure.solver;

import java.util.List;

/**
 * The part of the half section that is less solid than a level, as closed outlines: the wax inside the front. Empty
 * when all of it is more solid.
 *
 * @param level solid fraction at the front, 0 to 1
 * @param outlines closed polygons; the last point joins the first
 */
public record SolidFront(double level, List<List<SectionPoint>> outlines) {
    public SolidFront {
        outlines = outlines.stream().map(List::copyOf).toList();
    }

    /** Whether a point lies inside the front, in wax less solid than the level (even-odd rule). */
    public boolean holds(double r, double z) {
        boolean inside = false;
        for (List<SectionPoint> outline : outlines) {
            SectionPoint from = outline.get(outline.size() - 1);
            for (SectionPoint to : outline) {
                if (from.z() > z != to.z() > z
                        && r < from.r() + (z - from.z()) / (to.z() - from.z()) * (to.r() - from.r())) {
                    inside = !inside;
                }
                from = to;
            }
        }
        return inside;
    }
}
