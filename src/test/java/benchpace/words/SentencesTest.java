package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SentencesTest {
    @Test void a_sentence_ends_at_its_stop() {
        assertThat(Sentences.of(" Hot! Is it?  Wait.\nThen go on ")).containsExactly("Hot!", "Is it?", "Wait.",
                "Then go on");
        assertThat(Sentences.of("At 70.5 degrees.")).containsExactly("At 70.5 degrees.");
        assertThat(Sentences.of(" ")).isEmpty();
    }

    @Test void what_is_only_shortened_ends_none() {
        assertThat(Sentences.of("Wear gloves, e.g. of nitrile. Wait approx. 5 min, i.e. until it is dull."))
                .containsExactly("Wear gloves, e.g. of nitrile.", "Wait approx. 5 min, i.e. until it is dull.");
        assertThat(Sentences.of("Take scale no. 2. May it be moved? No. Leave it.")).containsExactly(
                "Take scale no. 2.", "May it be moved?", "No.", "Leave it.");
        assertThat(Sentences.of("Mind the casino. 2 of it.")).hasSize(2);
    }
}
