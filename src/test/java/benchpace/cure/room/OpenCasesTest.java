package benchpace.cure.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.solver.CureMilestones;
import benchpace.cure.solver.CureSolver;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The working resolution against an independent reference solver of the same continuous model (open cases). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OpenCasesTest {
    static List<OpenCases.Open> cases() {
        return OpenCases.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void half_firm_and_set_lie_within_two_per_cent_or_a_minute(OpenCases.Open open) {
        CureMilestones found = CureSolver.solve(open.c()).milestones();
        close(found.halfMinutes().orElseThrow(), open.minutes("halfMinutes"), 0.02, 1);
        close(found.firmMinutes().orElseThrow(), open.minutes("firmMinutes"), 0.02, 1);
        close(found.setMinutes().orElseThrow(), open.minutes("setMinutes"), 0.02, 1);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void skin_lies_within_five_per_cent_or_two_minutes_and_hand_cool_within_two_per_cent(OpenCases.Open open) {
        CureMilestones found = CureSolver.solve(open.c()).milestones();
        close(found.skinMinutes().orElseThrow(), open.minutes("skinMinutes"), 0.05, 2);
        close(found.handCoolMinutes().orElseThrow(), open.minutes("handCoolMinutes"), 0.02, 1);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void heat_lost_equals_heat_given_up(OpenCases.Open open) {
        assertThat(CureSolver.solve(open.c()).milestones().energyErrorFraction()).isLessThan(1e-6);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void milestones_come_in_their_order(OpenCases.Open open) {
        CureMilestones found = CureSolver.solve(open.c()).milestones();
        assertThat(found.halfMinutes().orElseThrow()).isLessThan(found.firmMinutes().orElseThrow());
        assertThat(found.firmMinutes().orElseThrow()).isLessThan(found.setMinutes().orElseThrow());
        assertThat(found.skinMinutes().orElseThrow()).isLessThan(found.setMinutes().orElseThrow());
    }

    static void close(double found, double expected, double fraction, double minutes) {
        assertThat(found).isCloseTo(expected, within(Math.max(fraction * expected, minutes)));
    }
}
