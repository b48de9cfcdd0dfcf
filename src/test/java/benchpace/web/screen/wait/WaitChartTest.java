package benchpace.web.screen.wait;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.words.Times;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The strips of the wait: nothing that is written may lie upon something else. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitChartTest {
    /** Where the heading "Seat" ends and "idle" begins, as the template places them in letters of 16 px. */
    private static final double SEAT_ENDS = 36;
    private static final double IDLE_BEGINS = 1022;
    private static final double HALF_CLOCK = 22;
    private static final double GAP = 8;
    private static final double LETTER = 8.6;
    /** What letters of 16 px have below their line. */
    private static final double DESCENT = 5;

    private static final List<WaitChart> CHARTS = charts();

    private static List<WaitChart> charts() {
        Times times = new Times(Evening.ZONE);
        List<ClassView> views = new ArrayList<>(List.of(Evenings.computed().view(62),
                Evenings.computed().view(88), Evenings.read().computed(70)));
        for (int shift = 0; shift < 15; shift++) { // so that a clock time falls on every place, the edges among them
            int[] seats = Evening.seats(1, 6);
            views.add(Evening.of("table-of-six", 6).open(0, "hello").open(20 + shift, "pour")
                    .done(30 + shift, "pour", seats).view(40 + shift));
        }
        return views.stream().flatMap(view -> WaitChart.of(view, times).stream()).toList();
    }

    @Test void no_clock_time_touches_the_headings_beside_the_strips() {
        List<WaitChart.Mark> marks = CHARTS.stream().flatMap(chart -> chart.marks().stream()).toList();

        assertThat(marks).anyMatch(mark -> mark.x() - HALF_CLOCK < SEAT_ENDS + GAP).allSatisfy(mark -> {
            assertThat(mark.clockX() - HALF_CLOCK).isGreaterThanOrEqualTo(SEAT_ENDS + GAP);
            assertThat(mark.clockX() + HALF_CLOCK).isLessThanOrEqualTo(IDLE_BEGINS - GAP);
            assertThat(Math.abs(mark.clockX() - mark.x())).as("still at its line").isLessThanOrEqualTo(HALF_CLOCK + 1);
        });
    }

    @Test void no_label_lies_under_the_diamond_of_the_ready_moment_or_runs_over_its_part() {
        assertThat(WaitChart.BASELINE + DESCENT).isLessThan(WaitChart.DIAMOND_TOP);
        assertThat(WaitChart.DIAMOND_TOP + 14).as("nor in the next row").isLessThan(WaitChart.ROW + 5);
        for (WaitChart chart : CHARTS) {
            for (WaitChart.Row row : chart.rows()) {
                assertThat(row.bars()).filteredOn(bar -> !bar.label().isEmpty()).allSatisfy(bar -> {
                    double ends = bar.labelX() + LETTER * bar.label().length();
                    assertThat(bar.labelX()).isGreaterThan(bar.x());
                    assertThat(ends).isLessThanOrEqualTo(bar.x() + bar.width());
                });
            }
        }
    }
}
