package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.kit.LoadConvention;
import benchpace.prep.evening.Chance;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands beside the fields of a form. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FieldWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "must be 1 to 60, not 99 | This must be 1 to 60, not 99.",
        "is missing | This is missing.",
        "the name of a step is missing | This is missing.",
        "must not be empty | This is missing.",
        "the planned length of \"Wicks\" must be above 0 | The planned length of \"Wicks\" must be above 0.",
        "\"8 bananas\" is not a weight: give grams | \"8 bananas\" is not a weight: give grams.",
        "must be one of \"talk\"; did you mean \"talk\"? | This must be one of \"talk\"; did you mean \"talk\"?"})
    void a_finding_is_a_whole_sentence_beside_its_field(String finding, String beside) {
        assertThat(FieldWords.beside(finding)).isEqualTo(beside);
    }

    @Test void a_percentage_of_fragrance_is_said_both_ways() {
        assertThat(FragranceWords.both(LoadConvention.OF_WAX.fractionOfTotal(6)))
                .isEqualTo("6 % of the wax, 5.66 % of all that is poured");
        assertThat(FragranceWords.both(0)).isEqualTo("0 % of the wax, 0 % of all that is poured");
    }

    @ParameterizedTest
    @CsvSource({"0, about 5 in 100", "0.516, about 50 in 100", "0.72, about 70 in 100", "1, about 95 in 100"})
    void a_guess_is_round_and_never_sure(double share, String words) {
        assertThat(GuessWords.about(new Chance(share, 0.05))).isEqualTo(words);
    }
}
