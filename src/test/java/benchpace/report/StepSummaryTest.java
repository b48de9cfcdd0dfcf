package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.pace.engine.Scene;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What steps took, by the ticks. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StepSummaryTest {

    @Test
    void a_step_is_told_by_its_quickest_middle_and_slowest_seat() {
        Scene scene = Scene.free(3).tap(2, 1, "vessel").tap(3, 2, "vessel").tap(7, 3, "vessel").tap(12, 1, "wicks");
        List<StepSummary> took = StepSummary.of(scene.track(20));
        assertThat(took).hasSize(2);
        StepSummary vessel = took.get(0);
        assertThat(new double[] {vessel.leastMinutes(), vessel.medianMinutes(), vessel.mostMinutes()})
                .containsExactly(2, 3, 7);
        assertThat(vessel.mostSeat()).isEqualTo(3);
        assertThat(took.get(1).seats()).isEqualTo(1);
        assertThat(took.get(1).medianMinutes()).isEqualTo(10);
    }

    @Test
    void pauses_are_taken_out_and_steps_jumped_over_tell_nothing() {
        Scene away = Scene.free(1).pause(1, 5, 1).tap(8, 1, "vessel");
        assertThat(StepSummary.of(away.track(20)).get(0).medianMinutes()).isEqualTo(4);
        Scene jumped = Scene.free(1).tap(9, 1, "wicks");
        assertThat(StepSummary.of(jumped.track(20))).isEmpty();
    }
}
