package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.attempt.Missing;
import benchpace.board.attempt.Model;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What cannot be worked out is said in one sentence, and what that means in another. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MissingWordsTest {

    @Test void nothing_missing_is_nothing_said() {
        assertThat(MissingWords.fact(Missing.NOTHING)).isEmpty();
        assertThat(MissingWords.sentence(Missing.NOTHING)).isEmpty();
    }

    @Test void one_thing_is_a_fact() {
        assertThat(MissingWords.fact(Missing.of(List.of(Model.WAIT))))
                .isEqualTo("The plan of the wait cannot be worked out just now.");
    }

    @Test void several_things_are_missing_in_one_sentence() {
        assertThat(MissingWords.sentence(Missing.of(List.of(Model.PACE, Model.WAIT, Model.CURE))))
                .isEqualTo("The plan of the wait, the candles' times and "
                        + "everybody's pace cannot be worked out just now. Taps and everything else go on.");
    }

    @Test void what_could_not_be_erased_is_tried_again() {
        assertThat(MissingWords.notErased(List.of("words of candles that left the shelf"))).containsExactly(
                "The words of candles that left the shelf that are due to be erased cannot be; it is tried again.");
    }

    @Test void whoever_watches_the_board_is_told_of_each_class() {
        assertThat(MissingWords.told(List.of("monday"), Map.of("thursday", Missing.of(List.of(Model.LINES)))))
                .containsExactly("Class monday cannot be read back and is left out; the log says why.",
                        "Class thursday: The pace lines cannot be worked out just now.");
    }

    @Test void the_instructor_is_told_how_many_classes_are_left_out() {
        assertThat(MissingWords.leftOut(0)).isEmpty();
        assertThat(MissingWords.leftOut(1))
                .isEqualTo("One class cannot be read back and is left out; the log says why.");
        assertThat(MissingWords.leftOut(3))
                .isEqualTo("3 classes cannot be read back and are left out; the log says why.");
    }
}
