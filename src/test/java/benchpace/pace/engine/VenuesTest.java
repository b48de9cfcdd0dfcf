package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.log.ReplayCommand;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two places with twelve past classes and thirty later ones of eight seats (invented guests), with known truth: at one
 * the steps take 20 to 50 per cent more or less than the plan says, at the other there is nothing to be learned.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class VenuesTest {
    @TempDir
    private Path folder;

    private ReplayScore replay(String venue, boolean history) throws Exception {
        Path place = Path.of(VenuesTest.class.getResource("/benchpace/pace/venues").toURI()).resolve(venue);
        List<ClassSimulator.Truth> truths = new ArrayList<>();
        List<String> logs = new ArrayList<>();
        for (String line : Files.readAllLines(place.resolve("after").resolve("truth.jsonl"))) {
            ClassSimulator.Truth truth = RecordedClassesTest.truth(new ObjectMapper().readTree(line));
            truths.add(truth);
            logs.add(place.resolve("after").resolve(truth.classId() + ".jsonl").toString());
        }
        Path forecasts = folder.resolve("G.csv");
        StringBuilder flags = new StringBuilder();
        StringBuilder err = new StringBuilder();
        int code = new ReplayCommand().run(logs, "-", forecasts.toString(), history
                ? Optional.of(place.resolve("past").toString()) : Optional.empty(), InputStream.nullInputStream(),
                flags, err);
        assertThat(code).as(err.toString()).isZero();
        ReplayScore score = new ReplayScore(flags.toString(), Files.readString(forecasts));
        truths.forEach(score::add);
        return score;
    }

    /** The budget at eight seats lies between 0.25 at six and 0.6 at twelve. */
    private static final double BUDGET = 0.4;

    @Test
    void what_past_classes_taught_raises_no_false_alarms() throws Exception {
        double without = 0;
        double with = 0;
        for (String venue : List.of("steps", "none")) {
            without += replay(venue, false).falseBehindPerClass();
            double learned = replay(venue, true).falseBehindPerClass();
            assertThat(learned).as(venue).isLessThanOrEqualTo(BUDGET);
            with += learned;
        }
        assertThat(with).isLessThanOrEqualTo(1.1 * without);
    }

    @Test
    void where_there_is_something_to_learn_home_time_is_told_better() throws Exception {
        assertThat(replay("steps", true).pinballMinutes()).isLessThan(replay("steps", false).pinballMinutes());
    }
}
