package benchpace.cure.solver;

/**
 * The half section r = 0..R, z = 0..H cut into rings: uniform in r; in z uniform or, in a tall candle, growing from a
 * thin top and a fairly thin base cell. Index = iz * radial + ir, so that the inner loops run along r.
 */
final class SectionGrid {
    private static final double LARGEST_RATIO_AT_THIRTY = 1.3;
    private static final double BASE_TO_TOP = 2.5;

    final int radial;
    final int axial;
    final double radius;
    final double height;
    final double dr;
    /** Heights of the layers and of their middles above the base, m. */
    final double[] dz;
    final double[] middle;
    /** Coefficients of theta differences towards the axis and the wall, 1/m2 (zero at axis and wall). */
    final double[] inward;
    final double[] outward;
    /** Coefficients downward and upward, 1/m2 (zero at base and top). */
    final double[] down;
    final double[] up;
    /** Area of each ring, m2. */
    final double[] ringArea;
    final Edge side;
    final Edge base;
    final Edge top;

    /**
     * A surface seen by the parabola through it and its two nearest cell centres at depths x1 and x2: with theta' the
     * slope there, theta(0) + reach theta' = theta1 + lean (theta1 - theta2). One order better than the nearest cell
     * alone, which matters for the skin.
     */
    record Edge(double lean, double reach) {
        static Edge at(double nearestCell, double nextCell) {
            double x1 = nearestCell / 2;
            double x2 = nearestCell + nextCell / 2;
            return new Edge(x1 * x1 / (x2 * x2 - x1 * x1), x1 * x2 / (x1 + x2));
        }

        double inside(double nearest, double next) {
            return nearest + lean * (nearest - next);
        }
    }

    SectionGrid(double radius, double height, Resolution resolution) {
        radial = resolution.radialCells();
        axial = resolution.axialCells();
        this.radius = radius;
        this.height = height;
        dr = radius / radial;
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
        dz = layers(height, axial, resolution.topCellMillimetres() / 1000);
        middle = new double[axial];
        down = new double[axial];
        up = new double[axial];
        double below = 0;
        for (int i = 0; i < axial; i++) {
            middle[i] = below + dz[i] / 2;
            below += dz[i];
            down[i] = i == 0 ? 0 : 2 / (dz[i] * (dz[i] + dz[i - 1]));
            up[i] = i == axial - 1 ? 0 : 2 / (dz[i] * (dz[i] + dz[i + 1]));
        }
        side = Edge.at(dr, dr);
        base = Edge.at(dz[0], dz[1]);
        top = Edge.at(dz[axial - 1], dz[axial - 2]);
    }

    /**
     * Layer heights from the base up: equal, or falling towards base and top as geometric rows that a ceiling cuts
     * off.
     */
    private static double[] layers(double height, int count, double topCell) {
        double[] layer = new double[count];
        double first = Math.min(topCell, height / count);
        double ratio = Math.pow(LARGEST_RATIO_AT_THIRTY, Math.min(1, 30.0 / count));
        while (row(layer, first, ratio, Double.MAX_VALUE) < height) {
            ratio *= 1.05;
        }
        double low = first;
        double high = height;
        for (int i = 0; i < 60; i++) {
            double ceiling = (low + high) / 2;
            if (row(layer, first, ratio, ceiling) < height) {
                low = ceiling;
            } else {
                high = ceiling;
            }
        }
        double stretch = height / row(layer, first, ratio, high);
        for (int i = 0; i < count; i++) {
            layer[i] *= stretch;
        }
        return layer;
    }

    private static double row(double[] layer, double first, double ratio, double ceiling) {
        double sum = 0;
        double fromTop = first;
        for (int i = layer.length - 1; i >= 0; i--) {
            layer[i] = Math.min(fromTop, ceiling);
            fromTop = Math.min(fromTop * ratio, 1e100);
        }
        double fromBase = BASE_TO_TOP * first;
        for (int i = 0; i < layer.length; i++) {
            layer[i] = Math.min(layer[i], fromBase);
            sum += layer[i];
            fromBase = Math.min(fromBase * ratio, 1e100);
        }
        return sum;
    }

    int cells() {
        return radial * axial;
    }

    /** Wall area beside one layer of cells, m2. */
    double wallArea(int iz) {
        return 2 * Math.PI * radius * dz[iz];
    }

    double radiusOf(int ir) {
        return (ir + 0.5) * dr;
    }

    double smallestLayer() {
        double smallest = height;
        for (double layer : dz) {
            smallest = Math.min(smallest, layer);
        }
        return smallest;
    }
}
