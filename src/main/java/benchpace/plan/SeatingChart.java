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

    /** How deep a table with a side behind it and one before it is drawn. */
    private static final int BAND = 3;
    /** Fewer make no horseshoe. */
    private static final int LEAST_BENT = 5;
    private static final int AT_A_ROUND = 6;
    private static final int ROUND_ACROSS = 4;
    /** Where one, two, three and more sit at a round table. */
    private static final List<List<Cell>> AROUND = List.of(
            List.of(new Cell(1, 0)),
            List.of(new Cell(1, 0), new Cell(1, 2)),
            List.of(new Cell(1, 0), new Cell(2, 0), new Cell(1, 2)),
            List.of(new Cell(1, 0), new Cell(2, 0), new Cell(2, 2), new Cell(1, 2)),
            List.of(new Cell(1, 0), new Cell(2, 0), new Cell(3, 1), new Cell(2, 2), new Cell(1, 2)),
            List.of(new Cell(1, 0), new Cell(2, 0), new Cell(3, 1), new Cell(2, 2), new Cell(1, 2), new Cell(0, 1)));

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
            case ROUNDS -> rounds(seats);
        };
    }

    /** The same with seat 1 at another end, or the numbers running the other way. */
    public static SeatingChart of(TableShape shape, int seats, Numbering numbering) {
        SeatingChart chart = of(shape, seats);
        return new SeatingChart(chart.columns, chart.rows,
                chart.places.stream().map(cell -> chart.turned(shape, cell, numbering)).toList(),
                chart.tables.stream().map(block -> !numbering.fromRight() ? block : new Block(
                        chart.columns - block.column - block.columns, block.row, block.columns, block.rows)).toList());
    }

    /**
     * The same with so many places more, as people bring a chair: beside the drawing at its right, from the back on.
     * Those who sit already stay where they are.
     *
     * @param more 0 or more
     */
    public SeatingChart with(int more) {
        List<Cell> all = new ArrayList<>(places);
        for (int i = 0; i < more; i++) {
            all.add(new Cell(columns + i / rows, i % rows));
        }
        return new SeatingChart(columns + (more + rows - 1) / rows, rows, all, tables);
    }

    /** Numbers run through rows and along a horseshoe; only around a table is there a side to begin at. */
    private Cell turned(TableShape shape, Cell cell, Numbering numbering) {
        boolean around = shape != TableShape.ROWS && !(shape == TableShape.HORSESHOE && places.size() >= LEAST_BENT);
        int column = numbering.fromRight() ? columns - 1 - cell.column : cell.column;
        int row = around && numbering.fromNear() ? cell.row / BAND * BAND + BAND - 1 - cell.row % BAND : cell.row;
        return new Cell(column, row);
    }

    /**
     * Seats that sit beside each other, by number.
     *
     * @param first the lowest number
     * @param last  the highest; all between belong to it
     * @param round they sit around a table, so that the last is beside the first
     */
    public record Bench(int first, int last, boolean round) {
        public int seats() {
            return last - first + 1;
        }
    }

    /** Who sits beside whom, by number; every seat is on one bench. @param seats 1 to {@link SeatNumber#MOST} */
    public static List<Bench> benches(TableShape shape, int seats) {
        List<Integer> lengths = switch (shape) {
            case LONG_TABLE, HORSESHOE -> List.of(seats);
            case TWO_TABLES -> seats < 2 ? List.of(seats) : List.of((seats + 1) / 2, seats / 2);
            case ROWS -> lengths(seats, across(seats));
            case ROUNDS -> aroundRounds(seats);
        };
        boolean round = shape != TableShape.ROWS && !(shape == TableShape.HORSESHOE && seats >= LEAST_BENT);
        List<Bench> benches = new ArrayList<>();
        int first = 1;
        for (int length : lengths) {
            benches.add(new Bench(first, first + length - 1, round));
            first += length;
        }
        return benches;
    }

    private static List<Integer> lengths(int seats, int most) {
        List<Integer> lengths = new ArrayList<>();
        for (int left = seats; left > 0; left -= most) {
            lengths.add(Math.min(most, left));
        }
        return lengths;
    }

    /** As few round tables as hold them, filled evenly: none has two seats more than another. */
    private static List<Integer> aroundRounds(int seats) {
        int tables = (seats + AT_A_ROUND - 1) / AT_A_ROUND;
        List<Integer> lengths = new ArrayList<>();
        for (int i = 0; i < tables; i++) {
            lengths.add((seats + tables - 1 - i) / tables);
        }
        return lengths;
    }

    /** Round tables for up to six, three beside each other; clockwise around each, from its back left. */
    private static SeatingChart rounds(int seats) {
        List<Integer> lengths = aroundRounds(seats);
        int across = lengths.size() <= 4 ? Math.min(2, lengths.size()) : 3;
        List<Cell> places = new ArrayList<>();
        List<Block> tables = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            int column = i % across * ROUND_ACROSS;
            int row = i / across * BAND;
            tables.add(new Block(column + 1, row + 1, 2, 1));
            AROUND.get(lengths.get(i) - 1).forEach(c -> places.add(new Cell(column + c.column, row + c.row)));
        }
        return new SeatingChart(across * ROUND_ACROSS, (lengths.size() + across - 1) / across * BAND, places, tables);
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
        if (seats < LEAST_BENT) {
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
        int across = across(seats);
        List<Cell> places = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            places.add(new Cell(i % across, i / across));
        }
        return new SeatingChart(across, (seats + across - 1) / across, places, List.of());
    }

    private static int across(int seats) {
        return seats <= 12 ? Math.min(4, seats) : seats <= 24 ? 6 : 8;
    }
}
