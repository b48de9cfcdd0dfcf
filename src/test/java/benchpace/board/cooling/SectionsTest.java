package benchpace.board.cooling;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.cure.CoolingCase;
import benchpace.cure.solver.CandleSection;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** How long drawings are kept. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SectionsTest {
    private final List<CoolingCase> solved = new ArrayList<>();
    private Duration passed = Duration.ZERO;
    private final Sections sections = new Sections(c -> {
        solved.add(c);
        return List.of(new CandleSection(0, 30, 60, 0, 0, 0, 0, List.of()));
    }, () -> passed.toNanos());

    private void askFor(int cases) {
        for (int i = 0; i < cases; i++) {
            CoolingCase c = ClassCandles.tableCase(TestPlans.evening().candles().get(0), 21, 62 + i * 0.05)
                    .coolingCase();
            sections.at(c, 1, 0);
        }
    }

    @Test void forty_candles_each_of_its_own_kind_are_solved_once_however_often_a_view_walks_along_them() {
        askFor(40);
        assertThat(solved).hasSize(40).doesNotHaveDuplicates();

        for (int minute = 0; minute < 5; minute++) {
            passed = passed.plusMinutes(1);
            askFor(40);
        }
        assertThat(solved).hasSize(40);
    }

    @Test void what_nobody_asked_for_lately_makes_room() {
        askFor(40);
        passed = passed.plusMinutes(4);
        askFor(1);

        assertThat(sections.size()).isLessThan(40).isGreaterThan(1);
    }

    @Test void there_is_an_end_to_what_is_kept() {
        askFor(1_000);

        assertThat(sections.size()).isLessThan(1_000).isGreaterThanOrEqualTo(80);
    }
}
