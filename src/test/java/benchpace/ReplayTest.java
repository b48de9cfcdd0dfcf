package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The {@code replay} command as typed: what it writes, and what it says of logs that are not as they should be. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReplayTest {
    private static final Path RECORDED = Path.of("src/test/resources/benchpace/pace");
    private static final String CLASS = "{\"t\":0,\"type\":\"class\",\"class_id\":\"c\",\"steps\":[{\"step\":\"wicks\","
            + "\"planMinutes\":4,\"opening\":\"free\",\"kind\":\"hands-on\"}],\"cureMinutes\":60,\"helpers\":0,"
            + "\"seats\":[{\"seat\":1,\"party\":1,\"sharesCandle\":false,\"present\":true}]}\n";

    @TempDir Path folder;
    private String said = "";

    private Path flags() {
        return folder.resolve("flags.csv");
    }

    private Path forecasts() {
        return folder.resolve("forecasts.csv");
    }

    private int replay(String... logs) {
        List<String> line = new ArrayList<>(List.of("replay"));
        line.addAll(List.of(logs));
        line.addAll(List.of("--flags", flags().toString(), "--forecasts", forecasts().toString()));
        return run(line.toArray(String[]::new));
    }

    private int run(String... line) {
        PrintStream before = System.err;
        ByteArrayOutputStream caught = new ByteArrayOutputStream();
        System.setErr(new PrintStream(caught, true, StandardCharsets.UTF_8));
        try {
            return Main.run(line);
        } finally {
            System.setErr(before);
            said = caught.toString(StandardCharsets.UTF_8);
        }
    }

    private String log(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, text);
        return file.toString();
    }

    @Test void the_rows_of_several_logs_are_appended_in_order() throws IOException {
        int code = replay(RECORDED.resolve("open-02.jsonl").toString(), RECORDED.resolve("open-01.jsonl").toString());

        assertThat(code).isZero();
        assertThat(said).isEmpty();
        List<String> flags = Files.readAllLines(flags());
        assertThat(flags.get(0)).isEqualTo("class_id,seat,t,level");
        assertThat(flags.stream().skip(1)).allMatch(row -> row.matches("open-0[12],\\d+,\\d+(\\.\\d)?,"
                + "(none|slipping|behind)"));
        List<String> forecasts = Files.readAllLines(forecasts());
        assertThat(forecasts.get(0)).isEqualTo("class_id,t,p10,p50,p90");
        assertThat(forecasts.stream().skip(1).map(row -> row.split(",")[0]).distinct())
                .containsExactly("open-02", "open-01");
        assertThat(forecasts.stream().skip(1).map(row -> row.split(",")).allMatch(r ->
                Double.parseDouble(r[2]) <= Double.parseDouble(r[3])
                        && Double.parseDouble(r[3]) <= Double.parseDouble(r[4]))).isTrue();
    }

    @Test void past_classes_sharpen_what_is_expected() throws IOException {
        String log = RECORDED.resolve("open-05.jsonl").toString();
        replay(log);
        String without = Files.readString(forecasts());
        Path history = Files.createDirectory(folder.resolve("history"));
        Files.copy(RECORDED.resolve("open-03.jsonl"), history.resolve("open-03.jsonl"));
        Files.copy(RECORDED.resolve("open-04.jsonl"), history.resolve("open-04.jsonl"));

        int code = run("replay", log, "--flags", flags().toString(), "--forecasts", forecasts().toString(),
                "--history", history.toString());

        assertThat(code).isZero();
        assertThat(Files.readString(forecasts())).isNotEqualTo(without);
    }

    @Test void a_line_that_is_not_json_is_named() throws IOException {
        assertRefused(log("broken.jsonl", CLASS + "{\"t\":5,\"type\":\"finish-step\",\"seat\":1,\n"), "line 2");
    }

    @Test void a_log_that_goes_back_in_time_is_refused() throws IOException {
        String tap = "{\"t\":%d,\"type\":\"finish-step\",\"seat\":1,\"step\":\"wicks\",\"id\":%d}%n";
        assertRefused(log("back.jsonl", CLASS + tap.formatted(60, 1) + tap.formatted(59, 2)), "line 3");
    }

    @Test void an_unknown_seat_or_step_is_refused() throws IOException {
        assertRefused(log("seat.jsonl", CLASS
                + "{\"t\":5,\"type\":\"finish-step\",\"seat\":2,\"step\":\"wicks\",\"id\":1}\n"), "seat 2");
        assertRefused(log("step.jsonl", CLASS
                + "{\"t\":5,\"type\":\"finish-step\",\"seat\":1,\"step\":\"mix\",\"id\":1}\n"), "\"mix\"");
    }

    @Test void a_log_that_is_not_there_is_refused() {
        assertRefused(folder.resolve("nowhere.jsonl").toString(), "can't be read");
    }

    @Test void without_a_place_to_write_to_the_command_is_wrong_usage() {
        assertThat(run("replay", RECORDED.resolve("open-01.jsonl").toString())).isEqualTo(Main.BAD_INPUT);
        assertThat(said).contains("--flags").hasLineCount(1);
    }

    /** Exit code 2, one sentence with the file and the place, and nothing written. */
    private void assertRefused(String log, String place) {
        assertThat(replay(log)).isEqualTo(Main.BAD_INPUT);
        assertThat(said).startsWith(log).contains(place).hasLineCount(1);
        assertThat(flags()).doesNotExist();
        assertThat(forecasts()).doesNotExist();
    }
}
