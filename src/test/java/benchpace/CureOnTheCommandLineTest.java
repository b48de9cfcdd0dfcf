package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** {@code benchpace cure CASES.json} from end to end, on the streams that a shell sees. */
@Isolated
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CureOnTheCommandLineTest {
    private final PrintStream stdout = System.out;
    private final PrintStream stderr = System.err;
    private final InputStream stdin = System.in;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    @BeforeEach void redirect() {
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @AfterEach void restore() {
        System.setOut(stdout);
        System.setErr(stderr);
        System.setIn(stdin);
    }

    private static byte[] openCases() throws IOException {
        try (InputStream in = CureOnTheCommandLineTest.class.getResourceAsStream("/benchpace/cure/open-cases.json")) {
            return in.readAllBytes();
        }
    }

    @Test void cases_of_a_file_are_answered_in_their_order() throws IOException {
        Path cases = Files.write(folder.resolve("cases.json"), openCases());

        assertThat(Main.run("cure", cases.toString())).isZero();

        ObjectMapper json = new ObjectMapper();
        JsonNode answers = json.readTree(out.toByteArray());
        JsonNode asked = json.readTree(openCases());
        assertThat(answers.findValuesAsText("id")).isEqualTo(asked.findValuesAsText("id"));
        assertThat(answers).allSatisfy(a -> assertThat(a.get("energyErrorFraction").asDouble()).isLessThan(1e-6));
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test void a_dash_reads_standard_input() throws IOException {
        System.setIn(new java.io.ByteArrayInputStream(openCases()));

        assertThat(Main.run("cure", "-")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"skinMinutes\"");
    }

    @Test void one_bad_case_refuses_all_with_code_2_and_one_sentence_and_no_output() throws IOException {
        String bad = new String(openCases(), StandardCharsets.UTF_8);
        int last = bad.lastIndexOf("\"waxMassG\":");
        int end = bad.indexOf(',', last);
        Path cases = Files.writeString(folder.resolve("cases.json"),
                bad.substring(0, last) + "\"waxMassG\": -3" + bad.substring(end));

        assertThat(Main.run("cure", cases.toString())).isEqualTo(Main.BAD_INPUT);
        assertThat(out.size()).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8).lines()).singleElement().asString().contains("waxMassG");
    }

    @Test void a_missing_file_and_a_missing_argument_are_code_2() {
        assertThat(Main.run("cure", folder.resolve("none.json").toString())).isEqualTo(Main.BAD_INPUT);
        assertThat(Main.run("cure")).isEqualTo(Main.BAD_INPUT);
        assertThat(out.size()).isZero();
    }
}
