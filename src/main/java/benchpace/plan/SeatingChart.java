package benchpace.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Where each place stands on the drawing of the table: a grid of equal cells, columns counted from 0 at the left as the
 * instructor sees it, rows from 0 at the top of the drawing, which is farthest from the instructor. Seat numbers run
 * around the table, so neighbours sit together.
 *
 * @param columns cells across
 * @param rows    cells deep
 * @param places  one cell a seat, in seat order
 * @param tables  the table tops to draw underneath, in the same cells
 */
public record SeatingChart(int columns, int rows, List<Cell> places, List<Block> tables) {

    /** One cell of the drawing. */
    public record Cell(int column, int row) { }

    /** A table top: its upper left cell and how many cells it covers. */
    public record Block(int column, int row, int columns, int rows) { }

    public SeatingChart {
        places = List.copyOf(places);
        tables = List.copyOf(tables);
    }

    /** @param seats 1 to {@link SeatNumber#MOST} */
    public static SeatingChart of(TableShape shape, int seats) {
        if (seats < 1 || seats > SeatNumber.MOST) {
            throw new IllegalArgumentException("a table has 1 to " + SeatNumber.MOST + " seats, not " + seats);
        }
        return switch (shape) {
            case LONG_TABLE -> longTable(seats, 0);
            case TWO_TABLES -> twoTables(seats);
            case HORSESHOE -> horseshoe(seats);
            case ROWS -> rows(seats);
        };
    }

    private static SeatingChart longTable(int seats, int firstRow) {
        int across = (seats + 1) / 2;
        List<Cell> places = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            places.add(i < across ? new Cell(i, firstRow) : new Cell(across - 1 - (i - across), firstRow + 2));
        }
        return new SeatingChart(across, firstRow + 3, places, List.of(new Block(0, firstRow + 1, across, 1)));
    }

    private static SeatingChart twoTables(int seats) {
        if (seats < 2) {
            return longTable(seats, 0);
        }
        SeatingChart near = longTable((seats + 1) / 2, 0);
        SeatingChart far = longTable(seats / 2, 3);
        List<Cell> places = new ArrayList<>(near.places);
        places.addAll(far.places);
        List<Block> tables = new ArrayList<>(near.tables);
        tables.addAll(far.tables);
        return new SeatingChart(near.columns, 6, places, tables);
    }

    /** Up the left arm, along the back, down the right arm; the open side faces the instructor. */
    private static SeatingChart horseshoe(int seats) {
        if (seats < 5) {
            return longTable(seats, 0);
        }
        int arm = Math.round(seats * 0.3f);
        int back = seats - 2 * arm;
        int columns = back + 2;
        List<Cell> places = new ArrayList<>();
        for (int i = 0; i < arm; i++) {
            places.add(new Cell(0, arm - i));
        }
        for (int i = 0; i < back; i++) {
            places.add(new Cell(1 + i, 0));
        }
        for (int i = 0; i < arm; i++) {
            places.add(new Cell(columns - 1, 1 + i));
        }
        List<Block> tables = new ArrayList<>(List.of(new Block(1, 1, back, 1)));
        if (arm > 1) {
            tables.add(new Block(1, 2, 1, arm - 1));
        }
        if (arm > 1 && back > 1) {
            tables.add(new Block(back, 2, 1, arm - 1));
        }
        return new SeatingChart(columns, arm + 1, places, tables);
    }

    private static SeatingChart rows(int seats) {
        int across = seats <= 12 ? Math.min(4, seats) : seats <= 24 ? 6 : 8;
        List<Cell> places = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            places.add(new Cell(i % across, i / across));
        }
        return new SeatingChart(across, (seats + across - 1) / across, places, List.of());
    }
}
