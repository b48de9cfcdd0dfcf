package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScrubbedTest {
    /** Letters that are alike in one case and not in the other are among them, and what is no letter. */
    private static final List<String> SYLLABLES = List.of("a", "A", "ß", "ſ", "s", "S", "é", "É", "e\u0301", "İ", "i",
            "ı", "I", "K", "k", "ς", "σ", "Σ", "3", "♥", " ", "-", ".", "'");

    private static String text(Random random, int syllables) {
        StringBuilder text = new StringBuilder();
        for (int n = 0; n < syllables; n++) {
            text.append(SYLLABLES.get(random.nextInt(SYLLABLES.size())));
        }
        return text.toString();
    }

    /** Every name looked for in every line, the longest first. */
    private static String oneByOne(List<String> names, String line) {
        String scrubbed = line;
        for (String name : names.stream().map(String::strip).filter(n -> n.length() > 1).distinct()
                .sorted(Comparator.comparingInt(String::length).reversed()).toList()) {
            scrubbed = Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE).matcher(scrubbed).replaceAll("…");
        }
        return scrubbed;
    }

    @Test void no_name_is_left_that_is_found_when_every_one_is_looked_for_in_every_line() {
        Random random = new Random(20270308);
        Scrubbed shapesAlone = new Scrubbed(List.of());
        int changed = 0;
        for (int round = 0; round < 2_000; round++) {
            List<String> names = new ArrayList<>();
            for (int n = 0; n < 12; n++) {
                names.add(text(random, 1 + random.nextInt(4)));
            }
            String among = names.get(random.nextInt(names.size()));
            String line = text(random, 8) + " " + (round % 2 == 0 ? among : among.toUpperCase(Locale.ROOT)) + " "
                    + text(random, 8);
            String expected = oneByOne(names, line);
            changed += expected.equals(line) ? 0 : 1;
            assertThat(new Scrubbed(names).of(line)).as("%s in \"%s\"", names, line)
                    .isEqualTo(shapesAlone.of(expected));
        }
        assertThat(changed).as("lines that bore one").isGreaterThan(500);
    }

    @Test void names_go_in_any_case_and_only_as_whole_words() {
        Scrubbed scrubbed = new Scrubbed(List.of("Ida", "Ida Quillon", "The loft"));

        assertThat(scrubbed.of("IDA QUILLON and ida waited in the Loft; Idaho is far"))
                .isEqualTo("… and … waited in …; Idaho is far");
    }
}
