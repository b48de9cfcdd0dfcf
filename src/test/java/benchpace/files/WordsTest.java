package benchpace.files;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WordsTest {
    @Test void kinds_are_spelt_with_hyphens() {
        assertThat(Words.all(StepKind.class)).containsExactly("talk", "hands-on", "pour", "cure", "finish");
        assertThat(Words.constant(TableShape.class, "LONG_TABLE")).isEmpty();
    }

    /**
     * Navarro, "A guided tour to approximate string matching" (2001) gives survey/surgery two apart; the swap of
     * neighbours is Damerau's (1964) fourth kind of slip.
     */
    @ParameterizedTest
    @CsvSource({"survey,surgery,2", "kind,kind,0", "kidn,kind,1", "minuts,minutes,1", "'',say,3", "NAME,name,0"})
    void slips_of_the_fingers_are_counted(String one, String other, int slips) {
        assertThat(Words.slips(one, other)).isEqualTo(slips);
        assertThat(Words.slips(other, one)).isEqualTo(slips);
    }
}
