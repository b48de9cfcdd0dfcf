package benchpace.cure.solver;

import benchpace.cure.CoolingCase;
import java.util.Arrays;

/**
 * The model's equations after cutting the section into rings: dy/dt = F(y), y holding the enthalpy of each cell (J/m3),
 * the temperatures of the side wall and the base (Celsius) and, last, the heat lost to the room so far (J).
 *
 * <p>rho dh/dt = (1/r) d/dr (r k dT/dr) + d/dz (k dT/dz), in finite volumes, so the heat given up by wax and vessel
 * equals the heat lost to rounding. Second order in the cell size (Patankar, Numerical Heat Transfer and Fluid Flow,
 * 1980, chapter 4; enthalpy form: Voller and Cross, Int. J. Heat Mass Transfer 24 (1981) 545-556).
 */
final class HeatFlow {
    /** A wall that answers this many times faster than any cell follows its surface without delay. */
    private static final double WALL_TOO_LIGHT = 8;

    final CoolingCase c;
    final SectionGrid grid;
    final PhaseLaw law;
    final boolean wallHolds;
    final boolean baseHolds;
    final int wallAt;
    final int baseAt;
    final int lostAt;
    final int size;
    private final double[] theta;
    private final double cellRate;

    HeatFlow(CoolingCase c, Resolution resolution) {
        this.c = c;
        double r = c.radiusMetres();
        double h = c.heightMetres();
        double loss = Math.max(c.topLossWM2K(), Math.max(c.sideLossWM2K(), c.baseLossWM2K()));
        // beyond this the wax is of one temperature to a part in a thousand, and stiff for nothing
        law = new PhaseLaw(c, Math.max(5, 1000 * loss * Math.max(r, h)));
        grid = new SectionGrid(r, h, resolution);
        double k = Math.max(law.kSolid, law.kLiquid);
        double diffusivity = Math.max(law.kSolid / law.cSolid, law.kLiquid / law.cLiquid);
        double thin = grid.smallestLayer();
        cellRate = 4 * diffusivity * (1 / (grid.dr * grid.dr) + 1 / (thin * thin)) * 1.2;
        wallHolds = wallRate(k, grid.dr, c.sideLossWM2K(), c.sideCapacityJM2K()) < WALL_TOO_LIGHT * cellRate;
        baseHolds = wallRate(k, grid.dz[0], c.baseLossWM2K(), c.baseCapacityJM2K()) < WALL_TOO_LIGHT * cellRate;
        wallAt = grid.cells();
        baseAt = wallAt + (wallHolds ? grid.axial : 0);
        lostAt = baseAt + (baseHolds ? grid.radial : 0);
        size = lostAt + 1;
        theta = new double[grid.cells() + 2 * grid.radial];
    }

    private static double wallRate(double k, double cell, double loss, double capacity) {
        return capacity == 0 ? Double.POSITIVE_INFINITY : (3 * k / cell + loss) / capacity;
    }

    /** A bound on the fastest rate of change in the system, 1/s (Gershgorin). */
    double fastestRate() {
        double k = Math.max(law.kSolid, law.kLiquid);
        double rate = cellRate;
        if (wallHolds) {
            rate += wallRate(k, grid.dr, c.sideLossWM2K(), c.sideCapacityJM2K());
        }
        if (baseHolds) {
            rate += wallRate(k, grid.dz[0], c.baseLossWM2K(), c.baseCapacityJM2K());
        }
        return rate;
    }

    double[] start() {
        double[] y = new double[size];
        Arrays.fill(y, 0, grid.cells(), law.enthalpy(c.pourC()));
        Arrays.fill(y, wallAt, lostAt, c.roomC());
        return y;
    }

    void rates(double[] y, double[] f) {
        int nr = grid.radial;
        int nz = grid.axial;
        double[] th = theta;
        law.theta(y, grid.cells(), th, nr);
        for (int iz = 0; iz < nz; iz++) {
            row(th, nr + iz * nr, f, iz * nr, grid.down[iz], grid.up[iz]);
        }
        f[lostAt] = side(y, f) + base(y, f) + top(f);
    }

    private void row(double[] th, int from, double[] f, int into, double down, double up) {
        double[] inward = grid.inward;
        double[] outward = grid.outward;
        int nr = inward.length;
        for (int i = 0; i < nr; i++) {
            double here = th[from + i];
            f[into + i] = inward[i] * (th[from + i - 1] - here) + outward[i] * (th[from + i + 1] - here)
                    + down * (th[from + i - nr] - here) + up * (th[from + i + nr] - here);
        }
    }

    private double side(double[] y, double[] f) {
        int nr = grid.radial;
        double reach = grid.side.reach();
        double loss = c.sideLossWM2K();
        double perVolume = 2 * Math.PI * grid.radius / grid.ringArea[nr - 1];
        double lost = 0;
        for (int iz = 0; iz < grid.axial; iz++) {
            int cell = iz * nr + nr - 1;
            double inside = grid.side.inside(theta[nr + cell], theta[nr + cell - 1]);
            double wall = wallHolds ? y[wallAt + iz] : law.surface(inside, reach, loss, c.roomC());
            double out = loss * (wall - c.roomC());
            double flux = wallHolds ? (inside - law.theta(wall)) / reach : out;
            f[cell] -= flux * perVolume;
            if (wallHolds) {
                f[wallAt + iz] = (flux - out) / c.sideCapacityJM2K();
            }
            lost += out * grid.wallArea(iz);
        }
        return lost;
    }

    private double base(double[] y, double[] f) {
        int nr = grid.radial;
        double reach = grid.base.reach();
        double loss = c.baseLossWM2K();
        double lost = 0;
        for (int ir = 0; ir < nr; ir++) {
            double inside = grid.base.inside(theta[nr + ir], theta[2 * nr + ir]);
            double wall = baseHolds ? y[baseAt + ir] : law.surface(inside, reach, loss, c.roomC());
            double out = loss * (wall - c.roomC());
            double flux = baseHolds ? (inside - law.theta(wall)) / reach : out;
            f[ir] -= flux / grid.dz[0];
            if (baseHolds) {
                f[baseAt + ir] = (flux - out) / c.baseCapacityJM2K();
            }
            lost += out * grid.ringArea[ir];
        }
        return lost;
    }

    private double top(double[] f) {
        int nr = grid.radial;
        int first = (grid.axial - 1) * nr;
        double loss = c.topLossWM2K();
        double lost = 0;
        for (int ir = 0; ir < nr; ir++) {
            double inside = grid.top.inside(theta[nr + first + ir], theta[first + ir]);
            double surface = law.surface(inside, grid.top.reach(), loss, c.roomC());
            double out = loss * (surface - c.roomC());
            f[first + ir] -= out / grid.dz[grid.axial - 1];
            lost += out * grid.ringArea[ir];
        }
        return lost;
    }

    /** Heat held by wax and vessel above that at solidus and room temperature, J. */
    double heldJoules(double[] y) {
        double sum = 0;
        for (int iz = 0; iz < grid.axial; iz++) {
            for (int ir = 0; ir < grid.radial; ir++) {
                sum += y[iz * grid.radial + ir] * grid.ringArea[ir] * grid.dz[iz];
            }
        }
        for (int iz = 0; wallHolds && iz < grid.axial; iz++) {
            sum += c.sideCapacityJM2K() * (y[wallAt + iz] - c.roomC()) * grid.wallArea(iz);
        }
        for (int ir = 0; baseHolds && ir < grid.radial; ir++) {
            sum += c.baseCapacityJM2K() * (y[baseAt + ir] - c.roomC()) * grid.ringArea[ir];
        }
        return sum;
    }
}
