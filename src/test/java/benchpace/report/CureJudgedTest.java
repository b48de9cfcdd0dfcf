package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CureJudgedTest {
    private static CureJudged judged(double at) {
        return new CureJudged(3, 40, 100, 90, 115, at);
    }

    @Test
    void the_difference_is_signed() {
        assertThat(judged(108).laterMinutes()).isEqualTo(8);
        assertThat(judged(93).laterMinutes()).isEqualTo(-7);
    }

    @Test
    void a_range_has_its_ends() {
        assertThat(judged(90).withinRange()).isTrue();
        assertThat(judged(115).withinRange()).isTrue();
        assertThat(judged(89.9).withinRange()).isFalse();
        assertThat(judged(115.1).withinRange()).isFalse();
    }

    @Test
    void a_range_that_ends_before_it_begins_is_refused() {
        assertThatThrownBy(() -> new CureJudged(3, 40, 100, 115, 90, 100))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
