package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.pattern.Remark;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What is said of a plan that was made from a few answers. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NewPlanWordsTest {

    @Test void a_candle_that_stays_is_told_with_its_minutes() {
        assertThat(NewPlanWords.of(new Remark.CollectedLater(60, 25))).isEqualTo("This candle needs about 60 min to "
                + "set, and the class leaves it 25: it stays with you and is collected later.");
        assertThat(NewPlanWords.of(new Remark.CollectedLater(60, 0))).isEqualTo("This candle needs about 60 min to "
                + "set, and the class ends with the pour: it stays with you and is collected later.");
        assertThat(NewPlanWords.of(new Remark.CollectedLater(0, 25))).startsWith("This candle does not set");
    }

    @Test void what_takes_long_is_told_with_what_would_help() {
        assertThat(NewPlanWords.of(new Remark.LongerThanAsked(60, 95)))
                .isEqualTo("Even in brief this class takes 95 min on paper, and not 60.");
        assertThat(NewPlanWords.of(new Remark.MorePlaces(1, 6))).isEqualTo("The turns at the pour are what takes long: "
                + "with 6 pouring at once instead of 1 everybody takes their candle home in time.");
    }

    @Test void hot_wax_at_a_table_of_children_is_told_in_degrees() {
        assertThat(NewPlanWords.of(new Remark.HotForChildren(62))).isEqualTo("This wax is poured at 62 °C, which is "
                + "hot for a table of children. A wax that is poured cooler is kinder.");
    }
}
