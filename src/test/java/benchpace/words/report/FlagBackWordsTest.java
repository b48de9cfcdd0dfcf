package benchpace.words.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.pace.Level;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.Hindsight.Reason;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What became of flags, as the look back says it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FlagBackWordsTest {
    private static String verdicts(Reason... reasons) {
        return FlagBackWords.verdicts(new Hindsight(Stream.of(reasons)
                .map(r -> new Hindsight.Judged(new FlagSpan(4, 1, Level.BEHIND, 10, 14, 12), r, 3)).toList(),
                List.of()));
    }

    @Test void several_are_counted_by_what_became_of_them() {
        assertThat(verdicts(Reason.HELD, Reason.STAYED, Reason.HELPED))
                .isEqualTo("Looking back, 2 were right and 1 was neither for certain.");
        assertThat(verdicts(Reason.HELD, Reason.STAYED, Reason.SOON_DONE))
                .as("the wrong one is told with the flags").isEqualTo("Of the others 2 were right.");
    }

    @Test void a_single_one_is_not_counted() {
        assertThat(verdicts(Reason.HELD)).isEqualTo("Looking back, it was right.");
        assertThat(verdicts(Reason.HELPED)).isEqualTo("Looking back, it was neither for certain.");
        assertThat(verdicts(Reason.SOON_DONE)).as("told with the flag").isEmpty();
    }

    @Test void without_a_flag_nothing_is_said() {
        assertThat(verdicts()).isEmpty();
    }
}
