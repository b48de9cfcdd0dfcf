package benchpace.cure;

/**
 * The half section r = 0..R, z = 0..H cut into rings. Cells are uniform in z and in r; index = iz * radial + ir, so that
 * the inner loops run along r.
 */
final class SectionGrid {
    final int radial;
    final int axial;
    final double radius;
    final double height;
    final double dr;
    final double dz;
    /** Coefficients of theta differences towards the axis and the wall, 1/m2 (zero at axis and wall). */
    final double[] inward;
    final double[] outward;
    /** Coefficients downward and upward, 1/m2 (zero at base and top). */
    final double[] down;
    final double[] up;
    /** Area of each ring, m2. */
    final double[] ringArea;

    SectionGrid(double radius, double height, int radial, int axial) {
        this.radial = radial;
        this.axial = axial;
        this.radius = radius;
        this.height = height;
        dr = radius / radial;
        dz = height / axial;
        inward = new double[radial];
        outward = new double[radial];
        ringArea = new double[radial];
        for (int i = 0; i < radial; i++) {
            double inner = i * dr;
            double outer = (i + 1) * dr;
            ringArea[i] = Math.PI * (outer * outer - inner * inner);
            inward[i] = i == 0 ? 0 : 2 * Math.PI * inner / (dr * ringArea[i]);
            outward[i] = i == radial - 1 ? 0 : 2 * Math.PI * outer / (dr * ringArea[i]);
        }
        down = new double[axial];
        up = new double[axial];
        for (int i = 0; i < axial; i++) {
            down[i] = i == 0 ? 0 : 1 / (dz * dz);
            up[i] = i == axial - 1 ? 0 : 1 / (dz * dz);
        }
    }

    int cells() {
        return radial * axial;
    }

    /** Wall area beside one layer of cells, m2. */
    double wallArea() {
        return 2 * Math.PI * radius * dz;
    }

    double radiusOf(int ir) {
        return (ir + 0.5) * dr;
    }

    double heightOf(int iz) {
        return (iz + 0.5) * dz;
    }
}
