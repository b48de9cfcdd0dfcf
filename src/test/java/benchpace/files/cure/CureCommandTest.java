package benchpace.files.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CureCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final StringBuilder out = new StringBuilder();
    private final StringBuilder err = new StringBuilder();

    private static String open(String name) throws IOException {
        try (InputStream in = CureCommandTest.class.getResourceAsStream("/benchpace/cure/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private int run(String json) throws IOException {
        return new CureCommand().run("-", new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)), out, err);
    }

    private void refused(String json, String... words) throws IOException {
        assertThat(run(json)).isEqualTo(2);
        assertThat(out).isEmpty();
        assertThat(err.toString().strip().lines()).hasSize(1);
        assertThat(err.toString().strip()).contains(words).endsWith(".");
    }

    @Test
    void the_open_cases_are_answered_in_their_order(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("cases.json");
        Files.writeString(file, open("open-cases.json"));
        assertThat(new CureCommand().run(file.toString(), InputStream.nullInputStream(), out, err)).isZero();
        assertThat(err).isEmpty();
        JsonNode found = JSON.readTree(out.toString());
        JsonNode expected = JSON.readTree(open("open-expected.json"));
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < found.size(); i++) {
            assertThat(found.get(i).get("id")).isEqualTo(expected.get(i).get("id"));
            double half = expected.get(i).get("halfMinutes").asDouble();
            assertThat(found.get(i).get("halfMinutes").asDouble()).isCloseTo(half, within(Math.max(1, 0.02 * half)));
            assertThat(found.get(i).get("energyErrorFraction").asDouble()).isLessThan(1e-6);
        }
    }

    @ParameterizedTest
    @CsvSource({"waxMassG, -3", "solidusC, 64.5", "pourC, 60", "roomC, 59", "innerDiameterMm, NaN",
        "topLossWM2K, Infinity", "waxMassG, 1e999", "latentHeatJKg, null", "densityKgM3, \"900\"", "roomC, [1]",
        "baseLossWM2K, true"})
    void a_bad_case_names_itself_and_its_field_and_nothing_is_written(String field, String value) throws IOException {
        ArrayNode cases = (ArrayNode) JSON.readTree(open("open-cases.json"));
        ((ObjectNode) cases.get(0)).put(field, "@");
        refused(cases.toString().replace("\"@\"", value), "open-01", field);
    }

    @Test
    void a_missing_field_is_named() throws IOException {
        ArrayNode cases = (ArrayNode) JSON.readTree(open("open-cases.json"));
        ((ObjectNode) cases.get(4)).remove("baseCapacityJM2K");
        refused(cases.toString(), "open-05", "baseCapacityJM2K", "missing");
    }

    @Test
    void a_case_without_a_name_is_named_by_its_number() throws IOException {
        ArrayNode cases = (ArrayNode) JSON.readTree(open("open-cases.json"));
        ((ObjectNode) cases.get(2)).remove("id");
        refused(cases.toString(), "case 3", "id");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{}", "[", "[1]", "[null]", "nonsense", "[{}] x", "\"text\"", "[[]]", "[{\"id\":\"a\"",
        "\u0000\u0001"})
    void what_is_no_array_of_cases_is_refused_in_one_sentence(String json) throws IOException {
        refused(json, "Standard input");
    }

    @Test
    void a_file_that_is_not_there_is_refused(@TempDir Path folder) throws IOException {
        String missing = folder.resolve("none.json").toString();
        assertThat(new CureCommand().run(missing, InputStream.nullInputStream(), out, err)).isEqualTo(2);
        assertThat(err).contains("none.json");
        assertThat(new CureCommand().run(folder.toString(), InputStream.nullInputStream(), out, err)).isEqualTo(2);
        assertThat(out).isEmpty();
    }

    @Test
    void no_cases_give_no_answers() throws IOException {
        assertThat(run(" [ ] ")).isZero();
        assertThat(JSON.readTree(out.toString())).isEmpty();
    }

    @Test
    void what_is_not_reached_within_a_day_is_null() throws IOException {
        ArrayNode cases = (ArrayNode) JSON.readTree(open("open-cases.json"));
        ObjectNode first = (ObjectNode) cases.get(0);
        first.put("innerDiameterMm", 400).put("waxMassG", 50_000).put("maker", "unknown fields are ignored");
        assertThat(run("[" + first + "," + first + "]")).isZero();
        JsonNode found = JSON.readTree(out.toString());
        assertThat(found.get(0).get("setMinutes").isNull()).isTrue();
        assertThat(found.get(1)).isEqualTo(found.get(0));
    }
}
