package benchpace.cure.solver;

/**
 * A point of the half section.
 *
 * @param r distance from the axis over the inner radius, 0 to 1
 * @param z height above the base over the wax's height, 0 to 1
 */
public record SectionPoint(double r, double z) { }
