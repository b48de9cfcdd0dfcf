package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.SectionPoint;
import benchpace.cure.solver.SolidFront;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CutWordsTest {
    private static final List<List<SectionPoint>> CORE = List.of(List.of(new SectionPoint(0, 0),
            new SectionPoint(0.5, 0), new SectionPoint(0.5, 1)));

    private static CandleSection section(double minutes, double solid, boolean liquidCore) {
        List<SolidFront> fronts = CandleSection.LEVELS.stream()
                .map(level -> new SolidFront(level, liquidCore ? CORE : List.of())).toList();
        return new CandleSection(minutes, 35, 50, solid, 3.4, 0.3, 2, fronts);
    }

    @Test void how_far_it_is_reads_the_same_beside_the_drawing_and_in_its_place() {
        CandleSection section = section(18, 0.27, true);

        assertThat(CutWords.solid(section)).isEqualTo("about 25 % set");
        assertThat(CutWords.described(section)).isEqualTo("18 minutes after the pour: about 25 % of the wax is set. At "
                + "the wall the set shell is about 3 mm thick, at the base less than 1 mm, under the top about 2 mm; "
                + "the middle is still liquid.");
        assertThat(CutWords.described(section(80, 0.8, false))).endsWith("; the middle is setting but still soft.");
    }

    @Test void at_its_ends_it_is_said_in_words_alone() {
        assertThat(CutWords.solid(section(0, 0, true))).isEqualTo("still liquid");
        assertThat(CutWords.described(section(0, 0, true)))
                .isEqualTo("Just poured: all of the wax is still liquid and hot.");
        assertThat(Stream.of(0.98, 1.0).map(s -> CutWords.solid(section(330, s, false))))
                .containsOnly("nearly all set");
        assertThat(CutWords.described(section(330, 1, false)))
                .endsWith("nearly all of the wax is set; the last of it is setting.");
    }
}
