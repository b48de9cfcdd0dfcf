package benchpace.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.PastClass.Standing;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Small histories, worked out by hand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class WhatCostTest {
    private static final Instant PROMISED = Instant.parse("2027-03-04T20:00:00Z");

    private static ClassFigures figures(Duration late, Lost... lost) {
        return new ClassFigures(PROMISED, PROMISED.plus(late), PROMISED, Optional.of(PROMISED), ReadyBy.HAND_TEST,
                List.of(lost), 0, 0, FlagFigures.NONE, CureFigures.NONE);
    }

    private static PastClass past(String id, boolean demo, Map<String, String> steps, Lost... lost) {
        return new PastClass(id, "An evening", "plan", "A plan", "", PROMISED, 8, demo, 0, Standing.RECKONED,
                Optional.of(figures(Duration.ZERO, lost)), steps);
    }

    private static Lost step(String id, double minutes) {
        return new Lost(Cause.STEP, id, minutes);
    }

    /**
     * Wicks held the first class for 6 minutes and the second, whose plan has two steps of that name, for 4 and 2, of
     * which 4 count; the third not at all: (6 + 4 + 0) / 3. The cure held the third for 9: 9 / 3.
     */
    @Test void a_cost_is_the_mean_of_all_classes_and_steps_of_one_name_are_one_thing() {
        List<WhatCost> costs = WhatCost.of(List.of(past("a", false, Map.of("w", "Wicks"), step("w", 6)),
                past("b", false, Map.of("x", "Wicks", "y", "Wicks"), step("x", 4), step("y", 2)),
                past("c", false, Map.of(), new Lost(Cause.CURE, "", 9)),
                past("d", true, Map.of("w", "Wicks"), step("w", 60))));

        assertThat(costs).extracting(WhatCost::cause).containsExactly(Cause.STEP, Cause.CURE);
        assertThat(costs.get(0).step()).isEqualTo("Wicks");
        assertThat(costs.get(0).meanMinutes()).isCloseTo(10 / 3.0, within(1e-12));
        assertThat(costs.get(0).classes()).isEqualTo(2);
        assertThat(costs.get(0).series().classes()).isEqualTo(3);
        assertThat(costs.get(1).meanMinutes()).isCloseTo(3, within(1e-12));
        assertThat(costs.get(1).classes()).isEqualTo(1);
    }

    /** Of a class it is told that nothing alone held it. */
    @Test void less_than_half_a_minute_held_no_class() {
        assertThat(WhatCost.of(List.of(past("a", false, Map.of("w", "Wicks"), step("w", 0.2),
                new Lost(Cause.CURE, "", 0.4))))).isEmpty();
        assertThat(WhatCost.of(List.of(past("a", false, Map.of("w", "Wicks"), step("w", 3)),
                past("b", false, Map.of("w", "Wicks"), step("w", 0.4))))).singleElement()
                .extracting(WhatCost::meanMinutes, WhatCost::classes).containsExactly(1.5, 1);
    }

    @Test void two_classes_that_are_told_to_have_ended_as_late_are_both_late_or_both_on_time() {
        for (int seconds = 0; seconds < 60; seconds++) {
            assertThat(figures(Duration.ofMinutes(5).plusSeconds(seconds)).punctuality()).as("5 min, %d s", seconds)
                    .isEqualTo(Punctuality.ON_TIME);
            assertThat(figures(Duration.ofMinutes(6).plusSeconds(seconds)).punctuality()).as("6 min, %d s", seconds)
                    .isEqualTo(Punctuality.LATE);
        }
    }
}
