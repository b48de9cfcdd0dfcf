package benchpace.cure;

/**
 * How finely a case is computed.
 *
 * @param radialCells cells from the axis to the wall, 4 to 400
 * @param axialCells cells from the base to the top, 4 to 400
 * @param stepTolerance largest local error of a time step, as a fraction of the heat to be given up
 */
public record Resolution(int radialCells, int axialCells, double stepTolerance) {
    private static final int WORKING_CELLS = 260;
    private static final double WORKING_TOLERANCE = 3e-3;

    public Resolution {
        if (radialCells < 4 || radialCells > 400 || axialCells < 4 || axialCells > 400) {
            throw new IllegalArgumentException("cells outside 4..400: " + radialCells + " x " + axialCells);
        }
        if (!(stepTolerance > 0 && stepTolerance < 0.1)) {
            throw new IllegalArgumentException("step tolerance outside 0..0.1: " + stepTolerance);
        }
    }

    /** The resolution used on the board: about 260 cells, as square as the candle's shape allows. */
    public static Resolution working(CoolingCase c) {
        double aspect = c.radiusMetres() / c.heightMetres();
        int radial = (int) Math.round(Math.sqrt(WORKING_CELLS * Math.min(Math.max(aspect, 0.3), 4)));
        radial = Math.min(Math.max(radial, 10), 40);
        return new Resolution(radial, Math.min(Math.max(WORKING_CELLS / radial, 10), 40), WORKING_TOLERANCE);
    }

    /** The same with every cell split {@code times} times each way, and smaller steps. */
    public Resolution finer(int times) {
        return new Resolution(radialCells * times, axialCells * times, stepTolerance / (times * times));
    }
}
