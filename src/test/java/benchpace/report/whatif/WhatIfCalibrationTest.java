package benchpace.report.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The ranges that are said hold what they say, on invented classes whose change is known. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatIfCalibrationTest {
    @Test void about_eight_in_ten_true_savings_are_in_the_range_and_the_middle_is_not_far_off() {
        Map<String, WhatIfCalibration.Score> scores = WhatIfCalibration.scores(8, 40, 2);
        WhatIfCalibration.Score all = scores.get("all");
        assertThat(all.count()).isGreaterThan(200);
        assertThat(all.covered()).isBetween(0.7, 0.92);
        assertThat(all.error()).isLessThan(2);
        assertThat(scores).containsKeys("Beforehand", "Earlier", "Free", "Led", "MoreHelp", "MoreStations");
    }
}
