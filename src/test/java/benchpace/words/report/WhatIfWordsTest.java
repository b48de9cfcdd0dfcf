package benchpace.words.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.TestPlans;
import benchpace.report.whatif.Change;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a change takes for granted, as the look back says it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatIfWordsTest {
    private static String assumed(Change change) {
        return WhatIfWords.assumed(change, TestPlans.evening());
    }

    @Test void work_before_the_class_adds_up_as_it_is_said() {
        assertThat(assumed(new Change.Beforehand(1, 5.2, 12, 6))).isEqualTo("Assumes that the other steps take as "
                + "long. For you it is about 30 min of work before the class, 6 times 5 min.");
    }

    @Test void what_is_less_than_half_a_minute_is_not_said_to_be_sooner() {
        String first = TestPlans.evening().steps().get(0).name();

        assertThat(assumed(new Change.Earlier(1, 4, 5, Map.of(0, 3.8), Map.of(1, 0.3))))
                .isEqualTo("Assumes that \"" + first + "\" is 4 min shorter.");
        assertThat(assumed(new Change.Earlier(1, 4, 5, Map.of(), Map.of(1, 4.0))))
                .endsWith("is opened 4 min sooner.");
    }
}
