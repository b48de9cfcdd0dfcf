package benchpace.web.screen.wall;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.words.Sentences;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Whatever a plan may say has room on the wall, if need be its first words. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WallFitTest {
    private static final int TEXTS = 4_000;
    private static final long SEED = 20261126;
    /** The most that a plan may have of a name, of what the wall says, and of a caution. */
    private static final int NAME = 60;
    private static final int WALL = 200;
    private static final int CAUTION = 400;
    private static final String LONG = ("Melted wax burns at once and keeps burning while it sticks to the skin, so "
            + "keep your sleeves back, do not lean over a neighbour, ").repeat(4).substring(0, CAUTION);

    private static String text(Random random, int most) {
        int length = random.nextInt(4) == 0 ? most : random.nextInt(most + 1);
        int stops = 2 + random.nextInt(40);
        StringBuilder text = new StringBuilder();
        while (text.length() < length) {
            int word = 1 + random.nextInt(16);
            for (int i = 0; i < word; i++) {
                text.append((char) ((random.nextInt(9) == 0 ? 'A' : 'a') + random.nextInt(26)));
            }
            text.append(random.nextInt(stops) == 0 ? ". " : random.nextInt(12) == 0 ? ", " : " ");
        }
        return text.substring(0, length).strip();
    }

    private static WallFit.Chosen chosen(String heading, String sentence, double lines, String caution) {
        return WallFit.of(new WallFit.Told(heading, sentence, lines, Sentences.of(caution), 0, 0));
    }

    @Test void whatever_is_chosen_holds_and_nearly_always_says_some_of_all_there_is_to_say() {
        Random random = new Random(SEED);
        int shortened = 0;
        int unsaid = 0;
        for (int i = 0; i < TEXTS; i++) {
            WallFit.Told told = new WallFit.Told(text(random, NAME), text(random, WALL), random.nextInt(2),
                    Sentences.of(text(random, CAUTION)), 0, random.nextInt(2) * WallRail.LINE);
            WallFit.Chosen chosen = WallFit.of(told);
            assertThat(chosen.fit().holds(told, chosen.sentence(), chosen.caution())).as(told + " " + chosen).isTrue();
            assertThat(chosen.sentence()).isNotEqualTo("\u2026");
            unsaid += chosen.sentence().isBlank() && !told.sentence().isBlank() ? 1 : 0;
            assertThat(chosen.caution().isEmpty()).isEqualTo(told.caution().isEmpty());
            assertThat(chosen.caution()).doesNotContain("\u2026").noneMatch(String::isBlank);
            shortened += chosen.caution().isEmpty() || chosen.caution().get(0).equals(told.caution().get(0)) ? 0 : 1;
        }
        assertThat(shortened).as("first sentences that had no room").isGreaterThan(TEXTS / 50);
        assertThat(unsaid).as("sentences of which hardly a word had room").isLessThan(TEXTS / 50);
    }

    @Test void a_long_caution_gives_up_words_so_that_the_sentence_keeps_a_few() {
        WallFit.Chosen both = chosen("Blend, weigh and slowly stir the fragrance into the warm wax",
                "Hold the jug by its handle and stir from the bottom up.", 1, LONG);

        assertThat(LONG).hasSize(CAUTION);
        assertThat(both.sentence()).startsWith("Hold the jug by");
        assertThat(both.caution()).singleElement().satisfies(first -> {
            assertThat(first).endsWith("\u2026").hasSizeGreaterThan(100);
            assertThat(LONG).startsWith(first.substring(0, first.length() - 1));
        });
    }

    @Test void where_nothing_is_said_a_long_caution_leaves_the_place_of_the_sentence_empty() {
        for (String blank : List.of("", " ")) {
            assertThat(chosen("Blend", blank, 1, LONG).sentence()).isBlank();
        }
    }

    @Test void few_words_keep_their_sizes_and_all_of_a_caution() {
        WallFit.Chosen chosen = chosen("Pour", "Slowly, into the middle.", 1, "Hot wax burns. Keep off.");

        assertThat(chosen.fit()).isEqualTo(WallFit.GENEROUS);
        assertThat(chosen.caution()).containsExactly("Hot wax burns.", "Keep off.");
    }
}
