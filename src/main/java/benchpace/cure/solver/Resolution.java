package benchpace.cure.solver;

import benchpace.cure.CoolingCase;

/**
 * How finely a case is computed.
 *
 * @param radialCells cells from the axis to the wall, 4 to 400
 * @param axialCells cells from the base to the top, 4 to 400
 * @param topCellMillimetres largest height of the cell under the top surface, where the skin forms; cells grow downward
 *     from it by less than a third each
 * @param stepTolerance largest local error of a time step, as a fraction of the heat to be given up
 */
public record Resolution(int radialCells, int axialCells, double topCellMillimetres, double stepTolerance) {
    private static final int WORKING_CELLS = 260;
    private static final double WORKING_TOLERANCE = 3e-3;
    private static final double WORKING_TOP_CELL = 1.6;
    /** No cell of the working grid need be smaller, metres: such a candle is nearly of one temperature. */
    private static final double SMALLEST_CELL = 0.0005;

    public Resolution {
        if (radialCells < 4 || radialCells > 400 || axialCells < 4 || axialCells > 400) {
            throw new IllegalArgumentException("cells outside 4..400: " + radialCells + " x " + axialCells);
        }
        if (!(stepTolerance > 0 && stepTolerance < 0.1) || !(topCellMillimetres > 0)) {
            throw new IllegalArgumentException("step tolerance outside 0..0.1 or top cell not above 0");
        }
    }

    /** The resolution used on the board: about 260 cells, as square as the candle's shape allows. */
    public static Resolution working(CoolingCase c) {
        double aspect = c.radiusMetres() / c.heightMetres();
        int radial = within(10, Math.sqrt(WORKING_CELLS * Math.min(Math.max(aspect, 0.3), 4)), 40);
        int axial = within(12, (double) WORKING_CELLS / radial, 40);
        return new Resolution(within(6, c.radiusMetres() / SMALLEST_CELL, radial),
                within(6, c.heightMetres() / SMALLEST_CELL, axial), WORKING_TOP_CELL, WORKING_TOLERANCE);
    }

    private static int within(int least, double wanted, int most) {
        return (int) Math.round(Math.min(Math.max(wanted, least), most));
    }

    /** The same with every cell split {@code times} times each way, and smaller steps. */
    public Resolution finer(int times) {
        return new Resolution(radialCells * times, axialCells * times, topCellMillimetres / times,
                stepTolerance / (times * times));
    }
}
