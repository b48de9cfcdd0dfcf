package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.TestPlans;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EveningsTest {
    private static final Setting SETTING = Setting.of(TestPlans.evening(), 6);

    @Test void the_same_seed_gives_the_same_timetable() {
        assertThat(Evenings.of(SETTING, 1).timetable()).isEqualTo(Evenings.of(SETTING, 1).timetable());
        assertThat(Evenings.of(SETTING, 2).timetable()).isNotEqualTo(Evenings.of(SETTING, 1).timetable());
    }
}
