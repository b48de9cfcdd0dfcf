package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.log.ReplayCommand;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Thirty recorded classes (invented guests) with known truth, replayed and scored. The bounds are a little looser than
 * what was reached when they were written, so that a change that makes the rule worse is noticed.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordedClassesTest {
    private static final List<ClassSimulator.Truth> TRUTHS = new ArrayList<>();
    private static String flags;
    private static String forecasts;

    @BeforeAll
    static void replay(@TempDir Path folder) throws Exception {
        Path cases = Path.of(RecordedClassesTest.class.getResource("/benchpace/pace/truth.jsonl").toURI()).getParent();
        ObjectMapper json = new ObjectMapper();
        List<String> logs = new ArrayList<>();
        for (String line : Files.readAllLines(cases.resolve("truth.jsonl"))) {
            JsonNode truth = json.readTree(line);
            TRUTHS.add(truth(truth));
            logs.add(cases.resolve(truth.get("class_id").asText() + ".jsonl").toString());
        }
        StringBuilder err = new StringBuilder();
        int code = new ReplayCommand().run(logs, folder.resolve("F.csv").toString(),
                folder.resolve("G.csv").toString(), Optional.empty(), InputStream.nullInputStream(),
                new StringBuilder(), err);
        assertThat(code).as(err.toString()).isZero();
        flags = Files.readString(folder.resolve("F.csv"));
        forecasts = Files.readString(folder.resolve("G.csv"));
    }

    static ClassSimulator.Truth truth(JsonNode node) {
        double[] pours = new double[node.get("n").asInt()];
        for (int i = 0; i < pours.length; i++) {
            JsonNode pour = node.get("pour_done").get(i);
            pours[i] = pour.isNull() ? Double.NaN : pour.asDouble();
        }
        List<ClassSimulator.Stall> stalls = new ArrayList<>();
        for (JsonNode stall : node.get("stalls")) {
            stalls.add(new ClassSimulator.Stall(stall.get("seat").asInt(),
                    List.of(ClassSimulator.STEPS).indexOf(stall.get("step").asText()), stall.get("start").asDouble(),
                    stall.get("end").asDouble(), stall.get("step_done").asDouble()));
        }
        return new ClassSimulator.Truth(node.get("class_id").asText(), pours.length, node.get("finish").asDouble(),
                pours, stalls);
    }

    private static ReplayScore score(int seats) {
        ReplayScore score = new ReplayScore(flags, forecasts);
        TRUTHS.stream().filter(t -> seats == 0 || t.seats() == seats).forEach(score::add);
        return score;
    }

    @Test
    void false_alarms_stay_few_at_every_size_of_table() {
        assertThat(score(6).falseBehindPerClass()).isLessThanOrEqualTo(0.25);
        assertThat(score(12).falseBehindPerClass()).isLessThanOrEqualTo(0.6);
        assertThat(score(24).falseBehindPerClass()).isLessThanOrEqualTo(1.2);
        assertThat(score(0).flagsPerClass()).isLessThanOrEqualTo(4);
    }

    @Test
    void most_stalls_are_found_and_found_in_time() {
        assertThat(score(0).shareMissed()).as("two that end within the question's two minutes are counted in")
                .isLessThanOrEqualTo(0.5);
        assertThat(score(0).medianToBehind()).isLessThanOrEqualTo(9);
        assertThat(score(0).medianToAnyFlag()).isLessThanOrEqualTo(7.6);
    }

    @Test
    void home_time_is_forecast_sharply_and_honestly() {
        assertThat(score(0).coverage()).isBetween(0.73, 0.9);
        assertThat(score(0).pinballMinutes()).isLessThanOrEqualTo(1.55);
    }
}
