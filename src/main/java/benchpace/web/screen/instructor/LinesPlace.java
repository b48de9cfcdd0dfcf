package benchpace.web.screen.instructor;

import benchpace.board.view.ClassView;
import benchpace.plan.SeatingChart;

/**
 * Where the pace lines stand on the instructor's page: in the free middle of a horseshoe that has room for them, else
 * in a strip under the table.
 *
 * @param inside whether they stand on the drawing of the table, in its cells
 * @param column from 0; meaningful inside only, like {@code row}, {@code columns} and {@code rows}
 * @param width  of the drawing, in its own units: about CSS pixels on a tablet 1280 wide
 */
public record LinesPlace(boolean inside, int column, int row, int columns, int rows, int width, int height) {
    private static final int BESIDE_WIDTH = 858;
    private static final int FULL_WIDTH = 1240;
    private static final int STRIP_HEIGHT = 124;
    private static final int LOW_STRIP_HEIGHT = 86;
    private static final int CELL_HEIGHT = 122;
    private static final int LEAST_CELLS = 2;

    static LinesPlace of(ClassView view) {
        SeatingChart chart = view.chart();
        boolean beside = InstructorPage.layout(view).equals("beside");
        LinesPlace strip = new LinesPlace(false, 0, 0, 0, 0, beside ? BESIDE_WIDTH : FULL_WIDTH,
                beside ? STRIP_HEIGHT : LOW_STRIP_HEIGHT);
        if (!beside) {
            return strip;
        }
        int column = firstFreeColumn(chart);
        int columns = chart.columns() - 2 * column;
        int row = 2;
        int rows = chart.rows() - row;
        boolean free = columns >= LEAST_CELLS && rows >= LEAST_CELLS && isFree(chart, column, row, columns, rows);
        return free ? new LinesPlace(true, column, row, columns, rows, columns * BESIDE_WIDTH / chart.columns(),
                rows * CELL_HEIGHT) : strip;
    }

    /** Past the seats of the left arm and the arm's table. */
    private static int firstFreeColumn(SeatingChart chart) {
        return chart.columns() > 2 ? 2 : 0;
    }

    private static boolean isFree(SeatingChart chart, int column, int row, int columns, int rows) {
        boolean seated = chart.places().stream().anyMatch(c -> c.column() >= column && c.column() < column + columns
                && c.row() >= row && c.row() < row + rows);
        boolean table = chart.tables().stream().anyMatch(t -> t.column() < column + columns
                && t.column() + t.columns() > column && t.row() < row + rows && t.row() + t.rows() > row);
        return !seated && !table;
    }
}
