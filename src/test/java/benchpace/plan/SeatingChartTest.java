package benchpace.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.plan.SeatingChart.Block;
import benchpace.plan.SeatingChart.Cell;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SeatingChartTest {

    private static boolean covers(Block block, int column, int row) {
        return column >= block.column() && column < block.column() + block.columns()
                && row >= block.row() && row < block.row() + block.rows();
    }

    private static boolean isTable(SeatingChart chart, int column, int row) {
        return chart.tables().stream().anyMatch(block -> covers(block, column, row));
    }

    @ParameterizedTest
    @EnumSource
    void every_seat_of_every_class_has_a_cell_of_its_own_inside_the_drawing(TableShape shape) {
        for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
            SeatingChart chart = SeatingChart.of(shape, seats);

            assertThat(chart.places()).as("%d seats", seats).hasSize(seats).doesNotHaveDuplicates()
                    .allMatch(c -> c.column() >= 0 && c.column() < chart.columns())
                    .allMatch(c -> c.row() >= 0 && c.row() < chart.rows());
        }
    }

    @ParameterizedTest
    @EnumSource
    void nobody_sits_on_a_table_and_no_table_sticks_out_or_lies_on_another(TableShape shape) {
        for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
            SeatingChart chart = SeatingChart.of(shape, seats);

            assertThat(chart.places()).as("%d seats", seats).noneMatch(c -> isTable(chart, c.column(), c.row()));
            for (int column = 0; column < chart.columns() + 5; column++) {
                for (int row = 0; row < chart.rows() + 5; row++) {
                    int c = column;
                    int r = row;
                    long tops = chart.tables().stream().filter(block -> covers(block, c, r)).count();
                    assertThat(tops).as("%d seats, cell %d, %d", seats, c, r)
                            .isLessThanOrEqualTo(c < chart.columns() && r < chart.rows() ? 1 : 0);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void places_that_are_added_stand_beside_the_drawing_and_move_nobody(TableShape shape) {
        for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
            SeatingChart asSetUp = SeatingChart.of(shape, seats);
            SeatingChart chart = asSetUp.with(7);

            assertThat(chart.places()).as("%d seats", seats).hasSize(seats + 7).doesNotHaveDuplicates()
                    .startsWith(asSetUp.places().toArray(Cell[]::new))
                    .allMatch(c -> c.column() < chart.columns() && c.row() < chart.rows())
                    .noneMatch(c -> isTable(chart, c.column(), c.row()));
            assertThat(chart.tables()).isEqualTo(asSetUp.tables());
        }
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ROWS")
    void everybody_sits_beside_a_table(TableShape shape) {
        for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
            SeatingChart chart = SeatingChart.of(shape, seats);

            assertThat(chart.places()).as("%d seats at %s", seats, shape)
                    .allMatch(c -> isTable(chart, c.column() - 1, c.row()) || isTable(chart, c.column() + 1, c.row())
                            || isTable(chart, c.column(), c.row() - 1) || isTable(chart, c.column(), c.row() + 1));
        }
    }

    @Test void numbers_run_around_a_long_table() {
        assertThat(SeatingChart.of(TableShape.LONG_TABLE, 5).places()).containsExactly(
                new Cell(0, 0), new Cell(1, 0), new Cell(2, 0), new Cell(2, 2), new Cell(1, 2));
    }

    @Test void numbers_run_around_a_horseshoe_whose_open_side_faces_the_instructor() {
        SeatingChart chart = SeatingChart.of(TableShape.HORSESHOE, 8);

        assertThat(chart.places()).containsExactly(
                new Cell(0, 2), new Cell(0, 1),
                new Cell(1, 0), new Cell(2, 0), new Cell(3, 0), new Cell(4, 0),
                new Cell(5, 1), new Cell(5, 2));
        assertThat(isTable(chart, 2, 2) || isTable(chart, 3, 2)).as("the inside is open").isFalse();
    }

    @Test void neighbours_in_number_sit_within_reach_of_each_other_at_a_horseshoe() {
        for (int seats = 5; seats <= SeatNumber.MOST; seats++) {
            List<Cell> places = SeatingChart.of(TableShape.HORSESHOE, seats).places();
            for (int i = 1; i < places.size(); i++) {
                Cell a = places.get(i - 1);
                Cell b = places.get(i);
                assertThat(Math.max(Math.abs(a.column() - b.column()), Math.abs(a.row() - b.row()))).isEqualTo(1);
            }
        }
    }

    @Test void a_table_has_as_many_seats_as_the_board_is_meant_for() {
        assertThatThrownBy(() -> SeatingChart.of(TableShape.ROWS, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SeatingChart.of(TableShape.ROWS, 61)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource
    void however_the_numbers_run_the_same_places_stand_at_the_same_tables(Numbering numbering) {
        for (TableShape shape : TableShape.values()) {
            for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
                SeatingChart chart = SeatingChart.of(shape, seats, numbering);
                assertThat(chart.places()).as("%s, %d seats", shape, seats).hasSize(seats).doesNotHaveDuplicates()
                        .noneMatch(c -> isTable(chart, c.column(), c.row()))
                        .allMatch(c -> c.column() >= 0 && c.column() < chart.columns())
                        .allMatch(c -> c.row() >= 0 && c.row() < chart.rows());
                if (shape != TableShape.ROWS) {
                    assertThat(chart.places()).allMatch(c -> isTable(chart, c.column() - 1, c.row())
                            || isTable(chart, c.column() + 1, c.row()) || isTable(chart, c.column(), c.row() - 1)
                            || isTable(chart, c.column(), c.row() + 1));
                }
            }
        }
    }

    @Test void the_numbers_begin_where_they_are_said_to_and_run_that_way() {
        assertThat(SeatingChart.of(TableShape.LONG_TABLE, 4, Numbering.ANTICLOCKWISE_FROM_LEFT).places())
                .containsExactly(new Cell(0, 2), new Cell(1, 2), new Cell(1, 0), new Cell(0, 0));
        assertThat(SeatingChart.of(TableShape.LONG_TABLE, 4, Numbering.ANTICLOCKWISE_FROM_RIGHT).places())
                .containsExactly(new Cell(1, 0), new Cell(0, 0), new Cell(0, 2), new Cell(1, 2));
        assertThat(SeatingChart.of(TableShape.HORSESHOE, 8, Numbering.ANTICLOCKWISE_FROM_RIGHT).places())
                .startsWith(new Cell(5, 2), new Cell(5, 1), new Cell(4, 0));
    }

    @Test void round_tables_hold_six_at_most_and_are_filled_evenly() {
        for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
            List<Integer> lengths = SeatingChart.benches(TableShape.ROUNDS, seats).stream()
                    .map(SeatingChart.Bench::seats).toList();
            assertThat(lengths).allMatch(length -> length <= 6);
            assertThat(lengths.get(0) - lengths.get(lengths.size() - 1)).isBetween(0, 1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_seat_is_on_one_bench_and_those_beside_each_other_there_sit_within_reach(TableShape shape) {
        for (int seats = 1; seats <= SeatNumber.MOST; seats++) {
            int next = 1;
            List<Cell> places = SeatingChart.of(shape, seats).places();
            for (SeatingChart.Bench bench : SeatingChart.benches(shape, seats)) {
                assertThat(bench.first()).isEqualTo(next);
                next = bench.last() + 1;
                for (int seat = bench.first(); seat < bench.last(); seat++) {
                    Cell a = places.get(seat - 1);
                    Cell b = places.get(seat);
                    assertThat(Math.max(Math.abs(a.column() - b.column()), Math.abs(a.row() - b.row())))
                            .as("%s, %d seats, after seat %d", shape, seats, seat).isBetween(1, 2);
                }
            }
            assertThat(next).isEqualTo(seats + 1);
        }
    }
}
