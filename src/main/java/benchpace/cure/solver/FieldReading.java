package benchpace.cure.solver;

/**
 * Reads from a computed state the few figures that milestones and thermometers ask for. Values on the axis and on the
 * surfaces are extrapolated from the cell centres, since a milestone speaks of "every point".
 */
final class FieldReading {
    private final HeatFlow flow;
    private final SectionGrid grid;
    private final PhaseLaw law;
    private final double[] axis;

    FieldReading(HeatFlow flow) {
        this.flow = flow;
        grid = flow.grid;
        law = flow.law;
        axis = new double[grid.axial];
    }

    /** Volume mean of the solid fraction, 0 to 1. */
    double solidFraction(double[] y) {
        int nr = grid.radial;
        double liquid = law.liquidEnthalpy;
        double sum = 0;
        for (int ir = 0; ir < nr; ir++) {
            double column = 0;
            for (int iz = 0; iz < grid.axial; iz++) {
                column += Math.min(Math.max(y[iz * nr + ir], 0), liquid) * grid.dz[iz];
            }
            sum += column * grid.ringArea[ir];
        }
        double whole = Math.PI * grid.radius * grid.radius * grid.height;
        return Math.min(Math.max(1 - sum / (liquid * whole), 0), 1);
    }

    /** Top surface temperature above a ring, Celsius. */
    double top(double[] y, int ir) {
        double inside = grid.top.inside(law.theta(temperature(y, ir, grid.axial - 1)),
                law.theta(temperature(y, ir, grid.axial - 2)));
        return law.surface(inside, grid.top.reach(), flow.c.topLossWM2K(), flow.c.roomC());
    }

    /** Middle of the top surface, where an infrared thermometer looks, Celsius. */
    double topCentre(double[] y) {
        return toAxis(top(y, 0), top(y, 1));
    }

    /** Warmest point of the top surface, Celsius. */
    double warmestTop(double[] y) {
        double warmest = topCentre(y);
        double before = 0;
        double last = 0;
        for (int ir = 0; ir < grid.radial; ir++) {
            before = last;
            last = top(y, ir);
            warmest = Math.max(warmest, last);
        }
        return Math.max(warmest, last + (last - before) / 2);
    }

    /** Warmest point of the wax, surfaces and axis included, Celsius. */
    double warmest(double[] y) {
        int nr = grid.radial;
        double warmest = Math.max(warmestTop(y), warmestVessel(y));
        for (int i = 0; i < grid.cells(); i++) {
            warmest = Math.max(warmest, law.temperature(y[i]));
        }
        int peak = 0;
        for (int iz = 0; iz < grid.axial; iz++) {
            axis[iz] = toAxis(temperature(y, 0, iz), temperature(y, 1, iz));
            peak = axis[iz] > axis[peak] ? iz : peak;
        }
        return Math.max(warmest, peakValue(peak));
    }

    private double peakValue(int at) {
        if (at == 0 || at == grid.axial - 1) {
            return axis[at];
        }
        // the parabola through the warmest layer's middle and its two neighbours
        double below = grid.middle[at] - grid.middle[at - 1];
        double above = grid.middle[at + 1] - grid.middle[at];
        double slopeBelow = (axis[at] - axis[at - 1]) / below;
        double slopeAbove = (axis[at + 1] - axis[at]) / above;
        double curve = (slopeAbove - slopeBelow) / (below + above);
        double slope = (slopeBelow * above + slopeAbove * below) / (below + above);
        return curve < 0 ? axis[at] - slope * slope / (4 * curve) : axis[at];
    }

    /** Warmest point of the vessel's wall and base, Celsius. */
    double warmestVessel(double[] y) {
        double warmest = Double.NEGATIVE_INFINITY;
        for (int iz = 0; iz < grid.axial; iz++) {
            warmest = Math.max(warmest, wall(y, iz));
        }
        for (int ir = 0; ir < grid.radial; ir++) {
            warmest = Math.max(warmest, base(y, ir));
        }
        return Math.max(warmest, toAxis(base(y, 0), base(y, 1)));
    }

    double wall(double[] y, int iz) {
        if (flow.wallHolds) {
            return y[flow.wallAt + iz];
        }
        double inside = grid.side.inside(law.theta(temperature(y, grid.radial - 1, iz)),
                law.theta(temperature(y, grid.radial - 2, iz)));
        return law.surface(inside, grid.side.reach(), flow.c.sideLossWM2K(), flow.c.roomC());
    }

    double base(double[] y, int ir) {
        if (flow.baseHolds) {
            return y[flow.baseAt + ir];
        }
        double inside = grid.base.inside(law.theta(temperature(y, ir, 0)), law.theta(temperature(y, ir, 1)));
        return law.surface(inside, grid.base.reach(), flow.c.baseLossWM2K(), flow.c.roomC());
    }

    double temperature(double[] y, int ir, int iz) {
        return law.temperature(y[iz * grid.radial + ir]);
    }

    /** T = a + b r^2 through the two rings nearest the axis; their centres lie at dr/2 and 3 dr/2. */
    private static double toAxis(double first, double second) {
        return first + (first - second) / 8;
    }
}
