package benchpace.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClaimWordsTest {
    private static final List<String> WORDS = ClaimWords.all();

    @Test void there_are_more_than_a_hundred_words_each_once() {
        assertThat(WORDS).hasSizeGreaterThan(100).doesNotHaveDuplicates().isSorted()
                .allMatch(w -> w.matches("[a-z]{4,9}"));
    }

    @Test void no_word_is_the_start_of_another_and_one_wrong_letter_never_makes_another() {
        for (String a : WORDS) {
            for (String b : WORDS) {
                if (!a.equals(b)) {
                    assertThat(b).doesNotStartWith(a);
                    assertThat(letters(a, b)).as(a + " and " + b).isGreaterThanOrEqualTo(2);
                }
            }
        }
    }

    @Test void the_same_seed_draws_the_same_word() {
        assertThat(ClaimWords.draw(7, Set.of())).isEqualTo(ClaimWords.draw(7, Set.of()))
                .isNotEqualTo(ClaimWords.draw(8, Set.of()));
    }

    @Test void a_word_on_the_shelf_is_not_drawn_with_another_number_while_others_are_free() {
        ClaimWord drawn = ClaimWords.draw(7, Set.of());
        ClaimWord sameWord = new ClaimWord(drawn.word(), drawn.number() == 99 ? 10 : drawn.number() + 1);
        assertThat(ClaimWords.draw(7, Set.of(sameWord)).word()).isNotEqualTo(drawn.word());
        assertThat(ClaimWords.draw(7, Set.of(drawn)).word()).isNotEqualTo(drawn.word());
    }

    @Test void what_is_typed_sloppily_is_still_read() {
        assertThat(ClaimWord.read("MAPLE42")).contains(new ClaimWord("maple", 42));
        assertThat(ClaimWord.read(" maple . 42")).contains(new ClaimWord("maple", 42));
        assertThat(ClaimWord.read("maple 07")).isEmpty();
        assertThat(ClaimWord.read("maple")).isEmpty();
        assertThat(ClaimWord.read("<b>42")).isEmpty();
    }

    @Test void a_word_of_three_to_twelve_letters_is_read() {
        assertThat(ClaimWord.read("ivy 10")).contains(new ClaimWord("ivy", 10));
        assertThat(ClaimWord.read("marshmallows 99")).contains(new ClaimWord("marshmallows", 99));
        assertThat(ClaimWord.read("ox 10")).isEmpty();
        assertThat(ClaimWord.read("strawberryjam 10")).isEmpty();
    }

    /** The first five outputs of splitmix64 from seed 1234567, as printed with its reference code (Vigna 2015). */
    @Test void seeds_are_spread_by_splitmix64() {
        String[] printed = {"6457827717110365317", "3203168211198807973", "9817491932198370423",
            "4593380528125082431", "16408922859458223821"};
        for (int i = 0; i < printed.length; i++) {
            int at = (int) Math.floorMod(Long.parseUnsignedLong(printed[i]), WORDS.size() * 90L);
            assertThat(ClaimWords.draw(1234567 + i * 0x9E3779B97F4A7C15L, Set.of()))
                    .isEqualTo(new ClaimWord(WORDS.get(at % WORDS.size()), 10 + at / WORDS.size()));
        }
    }

    /** Levenshtein distance by its defining recurrence. */
    private static int letters(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 ? j : j == 0 ? i : Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1,
                        d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1));
            }
        }
        return d[a.length()][b.length()];
    }
}
