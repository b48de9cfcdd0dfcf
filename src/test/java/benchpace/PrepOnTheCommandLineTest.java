package benchpace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code benchpace prep PLAN.json} from end to end, on the streams that a shell sees. */
@Isolated
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrepOnTheCommandLineTest {
    private final ObjectMapper json = new ObjectMapper();
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

    private static byte[] plan() throws IOException {
        try (InputStream in = PrepOnTheCommandLineTest.class.getResourceAsStream("/benchpace/prep/plan.json")) {
            return in.readAllBytes();
        }
    }

    private String written(JsonNode plan) throws IOException {
        return Files.write(folder.resolve("plan.json"), json.writeValueAsBytes(plan)).toString();
    }

    private String sound() throws IOException {
        return Files.write(folder.resolve("plan.json"), plan()).toString();
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private JsonNode sheet() throws IOException {
        return json.readTree(out.toByteArray());
    }

    private static void near(JsonNode number, double expected) {
        assertThat(number.asDouble()).isCloseTo(expected, within(0.0005));
    }

    @Test void a_class_of_six_is_worked_out_with_the_promised_names() throws IOException {
        assertThat(Main.run("prep", sound(), "--seats", "6", "--json")).isZero();

        JsonNode sheet = sheet();
        JsonNode candle = sheet.at("/candles/0");
        assertThat(sheet.get("seats").asInt()).isEqualTo(6);
        assertThat(candle.get("candle").asText()).isEqualTo("amber-soy");
        assertThat(candle.get("seats").asInt()).isEqualTo(6);
        near(candle.get("waxGramsPerSeat"), 103.7736);
        near(candle.get("fragranceGramsPerSeat"), 6.2264);
        near(candle.get("fragrancePercentOfWax"), 6);
        near(candle.get("fragrancePercentOfTotal"), 5.6604);
        assertThat(candle.get("load").asText()).isEqualTo("allowed");
        near(sheet.at("/totals/waxGrams"), 653.7736);
        near(sheet.at("/totals/fragranceGrams"), 39.2264);
        assertThat(sheet.at("/melters/0/id").asText()).isEqualTo("pot");
        near(sheet.at("/melters/0/neededGrams"), 653.7736);
        assertThat(sheet.at("/melters/0/fills").asInt()).isEqualTo(1);
        near(sheet.at("/melters/0/firstFillGrams"), 1553.7736);
        near(sheet.at("/melters/0/switchOnMinutesBefore"), sheet.at("/melters/0/meltMinutes").asDouble() + 60);
        near(sheet.at("/melters/0/heatKilojoules"), sheet.at("/melters/0/meltMinutes").asDouble() * 0.7 * 60);
        near(sheet.at("/circuits/0/designAmps"), 25.4167);
        assertThat(sheet.at("/circuits/0/verdict").asText()).isEqualTo("over");
        assertThat(sheet.at("/supplies/0/id").asText()).isEqualTo("wick");
        assertThat(sheet.at("/supplies/0/needed").asInt()).isEqualTo(7);
        assertThat(sheet.at("/supplies/0/toBuy").asInt()).isZero();
        assertThat(sheet.at("/supplies/0/packs").asInt()).isZero();
        near(sheet.at("/timetable/promisedMinutes"), 120);
        assertThat(sheet.at("/timetable/chanceOnTime").asDouble()).isStrictlyBetween(0.0, 1.0);
        assertThat(sheet.at("/timetable/p10Minutes").asDouble())
                .isLessThan(sheet.at("/timetable/p50Minutes").asDouble());
        assertThat(sheet.at("/timetable/p50Minutes").asDouble())
                .isLessThan(sheet.at("/timetable/p90Minutes").asDouble());
        assertThat(sheet.get("problems")).hasSize(1);
        assertThat(said()).isEmpty();
    }

    @Test void seats_choose_candles() throws IOException {
        assertThat(Main.run("prep", sound(), "--seats", "6", "--candles", "amber-soy=4,tin-paraffin=2", "--json"))
                .isZero();

        assertThat(sheet().get("candles")).hasSize(2);
        assertThat(sheet().findValues("seats").stream().map(JsonNode::asInt)).containsExactly(6, 4, 2);
        near(sheet().at("/melters/0/neededGrams"), 4 * 103.77358 * 1.05);
    }

    @Test void a_dash_reads_standard_input() throws IOException {
        System.setIn(new ByteArrayInputStream(plan()));

        assertThat(Main.run("prep", "-", "--seats", "3", "--json")).isZero();
        assertThat(sheet().get("seats").asInt()).isEqualTo(3);
    }

    @Test void without_json_people_can_read_it() throws IOException {
        assertThat(Main.run("prep", sound(), "--seats", "6")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8)).startsWith("Prep: Prepared evening, 6 seats")
                .contains("104 g wax and 6.2 g fragrance each", "6 % of the wax = 5.66 % of all that is poured",
                        "Switch it on 1 h 9 min before the beginning", "in 100", "20 minutes", "Never water")
                .doesNotContain("null", "Optional");
        assertThat(out.toString(StandardCharsets.UTF_8).lines()).allMatch(line -> line.length() <= 100)
                .as("two pages").hasSizeLessThan(150);
    }

    @Test void a_figure_that_is_wanting_is_null_and_named_and_the_rest_stands() throws IOException {
        JsonNode plan = json.readTree(plan());
        ((ObjectNode) plan.at("/prep/melters/0")).remove("efficiency");
        ((ObjectNode) plan.at("/prep/circuits/0")).remove("volts");
        ((ObjectNode) plan.at("/prep/loads")).remove("convention");

        assertThat(Main.run("prep", written(plan), "--seats", "6", "--json")).isZero();

        JsonNode sheet = sheet();
        assertThat(sheet.at("/melters/0/meltMinutes").isNull()).isTrue();
        assertThat(sheet.at("/melters/0/switchOnMinutesBefore").isNull()).isTrue();
        assertThat(sheet.at("/melters/0/heatKilojoules").asDouble()).isPositive();
        assertThat(sheet.at("/circuits/0/designAmps").isNull()).isTrue();
        assertThat(sheet.at("/circuits/0/verdict").isNull()).isTrue();
        assertThat(sheet.at("/candles/0/load").asText()).isEqualTo("unknown");
        assertThat(sheet.get("problems").toString()).contains("efficiency is wanting", "voltage is wanting",
                "no load can be called allowed");
        assertThat(sheet.get("problems")).hasSize(3);
    }

    @Test void a_broken_plan_is_told_as_check_tells_it_and_nothing_is_written() throws IOException {
        JsonNode plan = json.readTree(plan());
        ((ObjectNode) plan.at("/prep/circuits/0")).put("amps", -3);
        ((ObjectNode) plan.at("/candles/0")).put("fillGrams", 0);
        String file = written(plan);
        Main.run("check", file);
        String checked = said();
        err.reset();

        assertThat(Main.run("prep", file, "--seats", "6", "--json")).isEqualTo(Main.BAD_INPUT);

        assertThat(said()).isEqualTo(checked).contains("/candles/0", "/prep/circuits/0").hasLineCount(2);
        assertThat(out.size()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0 | amber-soy=1 | --seats: a class has 1 to 60 seats, not 0.",
        "-6 | amber-soy=1 | --seats: a class has 1 to 60 seats, not -6.",
        "1000000000000 | amber-soy=1 | --seats: a class has 1 to 60 seats, not 1000000000000.",
        "six | amber-soy=1 | --seats: a class has 1 to 60 seats, not six.",
        "NaN | amber-soy=1 | --seats: a class has 1 to 60 seats, not NaN.",
        "6 | bowl=2 | --candles: the plan has no candle \"bowl\".",
        "6 | amber-soy=7 | --candles: candles are chosen for 7 seats, and there are 6.",
        "6 | amber-soy=-1 | --candles: a candle is made at 0 or more seats, not -1.",
        "6 | amber-soy=1,amber-soy=2 | --candles: \"amber-soy\" is chosen twice.",
        "6 | amber-soy | --candles: \"amber-soy\" is not a candle with its number of seats, like amber-soy=4.",
        "6 | =3 | --candles: the plan has no candle \"\"."})
    void a_choice_that_cannot_be_is_refused_in_one_sentence(String seats, String candles, String sentence)
            throws IOException {
        assertThat(Main.run("prep", sound(), "--seats", seats, "--candles", candles)).isEqualTo(Main.BAD_INPUT);
        assertThat(said().strip()).isEqualTo(sentence);
        assertThat(out.size()).isZero();
    }

    @Test void a_plan_of_before_needs_no_field_of_it() throws IOException {
        JsonNode plan = json.readTree(plan());
        ((ObjectNode) plan).remove("prep");

        assertThat(Main.run("prep", written(plan), "--seats", "8", "--json")).isZero();
        assertThat(sheet().get("melters")).isEmpty();
        near(sheet().at("/totals/waxGrams"), 8 * 103.77358);
    }

    @Test void a_file_that_is_not_there_is_told() {
        assertThat(Main.run("prep", folder.resolve("none.json").toString(), "--seats", "6")).isEqualTo(Main.BAD_INPUT);
        assertThat(said()).contains("there is no such file").hasLineCount(1);
    }
}
