package benchpace.cure.solver;

/** The solid fraction on a net that reaches from axis to wall and from base to top, in parts of radius and height. */
final class SectionField {
    private static final double SHELL = 0.5;

    final double[] r;
    final double[] z;
    /** Solid fraction [r][z]. */
    final double[][] solid;

    SectionField(HeatFlow flow, double[] y) {
        SectionGrid grid = flow.grid;
        FieldReading reading = new FieldReading(flow);
        int nr = grid.radial;
        int nz = grid.axial;
        r = new double[nr + 2];
        z = new double[nz + 2];
        solid = new double[nr + 2][nz + 2];
        r[nr + 1] = 1;
        z[nz + 1] = 1;
        for (int ir = 0; ir < nr; ir++) {
            r[ir + 1] = grid.radiusOf(ir) / grid.radius;
            solid[ir + 1][0] = fraction(flow, reading.base(y, ir));
            solid[ir + 1][nz + 1] = fraction(flow, reading.top(y, ir));
        }
        for (int iz = 0; iz < nz; iz++) {
            z[iz + 1] = grid.middle[iz] / grid.height;
            solid[nr + 1][iz + 1] = fraction(flow, reading.wall(y, iz));
            for (int ir = 0; ir < nr; ir++) {
                solid[ir + 1][iz + 1] = flow.law.solidFraction(y[iz * nr + ir]);
            }
        }
        for (int j = 0; j < nz + 2; j++) {
            solid[0][j] = Math.min(Math.max(solid[1][j] + (solid[1][j] - solid[2][j]) / 8, 0), 1);
        }
        solid[nr + 1][0] = Math.max(solid[nr][0], solid[nr + 1][1]);
        solid[nr + 1][nz + 1] = Math.max(solid[nr][nz + 1], solid[nr + 1][nz]);
    }

    private static double fraction(HeatFlow flow, double celsius) {
        return flow.law.solidFraction(flow.law.enthalpy(celsius));
    }

    /** Thickness of the shell from the wall inward at mid height, part of the radius. */
    double wallShell() {
        int middle = 0;
        while (z[middle] < 0.5) {
            middle++;
        }
        for (int i = r.length - 1; i > 0; i--) {
            if (solid[i - 1][middle] < SHELL) {
                return solid[i][middle] < SHELL ? 1 - r[i]
                        : 1 - cross(r[i], r[i - 1], solid[i][middle], solid[i - 1][middle]);
            }
        }
        return 1;
    }

    /** Thickness on the axis from the base up, part of the height. */
    double baseShell() {
        for (int j = 0; j < z.length - 1; j++) {
            if (solid[0][j + 1] < SHELL) {
                return solid[0][j] < SHELL ? z[j] : cross(z[j], z[j + 1], solid[0][j], solid[0][j + 1]);
            }
        }
        return 1;
    }

    /** Thickness on the axis from the top down, part of the height. */
    double topShell() {
        for (int j = z.length - 1; j > 0; j--) {
            if (solid[0][j - 1] < SHELL) {
                return solid[0][j] < SHELL ? 1 - z[j] : 1 - cross(z[j], z[j - 1], solid[0][j], solid[0][j - 1]);
            }
        }
        return 1;
    }

    private static double cross(double from, double to, double at, double next) {
        return from + (SHELL - at) / (next - at) * (to - from);
    }
}
