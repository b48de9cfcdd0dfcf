package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReplayCommandTest {
    private static final String RECORDED = "/benchpace/pace/open-15.jsonl";

    @TempDir
    private Path folder;
    private final StringBuilder out = new StringBuilder();
    private final StringBuilder err = new StringBuilder();

    private static String recorded() throws Exception {
        try (InputStream text = ReplayCommandTest.class.getResourceAsStream(RECORDED)) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private int replay(String log, String flags, String forecasts) throws Exception {
        return new ReplayCommand().run(List.of("-"), flags, forecasts, Optional.empty(),
                new ByteArrayInputStream(log.getBytes(StandardCharsets.UTF_8)), out, err);
    }

    @Test
    void flags_and_forecasts_are_written_with_their_headers() throws Exception {
        Path flags = folder.resolve("F.csv");
        Path forecasts = folder.resolve("G.csv");
        assertThat(replay(recorded(), flags.toString(), forecasts.toString())).isZero();
        assertThat(Files.readAllLines(flags).get(0)).isEqualTo("class_id,seat,t,level");
        assertThat(Files.readAllLines(flags)).hasSizeGreaterThan(1).allMatch(
                l -> l.matches("class_id,.*|open-15,\\d+,\\d+(\\.\\d)?,(none|slipping|behind)"));
        List<String> rows = Files.readAllLines(forecasts);
        assertThat(rows.get(0)).isEqualTo("class_id,t,p10,p50,p90");
        assertThat(rows.get(1)).startsWith("open-15,300,");
        for (int j = 2; j < rows.size(); j++) {
            assertThat(Double.parseDouble(rows.get(j).split(",")[1])
                    - Double.parseDouble(rows.get(j - 1).split(",")[1])).isBetween(1.0, 300.0);
        }
        assertThat(err).isEmpty();
    }

    @Test
    void what_comes_later_never_changes_what_was_said_before() throws Exception {
        replay(recorded(), "-", folder.resolve("G").toString());
        String whole = out.toString();
        out.setLength(0);
        List<String> lines = recorded().lines().toList();
        replay(String.join("\n", lines.subList(0, lines.size() / 2)), "-", folder.resolve("G").toString());
        String half = out.toString();
        assertThat(whole).startsWith(half);
        assertThat(half.lines().count()).isGreaterThan(1);
    }

    @Test
    void a_bad_line_stops_it_with_one_sentence_and_no_files() throws Exception {
        Path flags = folder.resolve("F.csv");
        Path forecasts = folder.resolve("G.csv");
        int code = replay(recorded() + "{\"t\":1}\n", flags.toString(), forecasts.toString());
        assertThat(code).isEqualTo(2);
        assertThat(err.toString()).startsWith("standard input, line ").contains("time goes back").hasLineCount(1);
        assertThat(folder).isEmptyDirectory();
        assertThat(out).isEmpty();
    }

    @Test
    void a_file_that_is_not_there_is_bad_input() throws Exception {
        int code = new ReplayCommand().run(List.of(folder.resolve("none.jsonl").toString()), "-", "-",
                Optional.empty(), InputStream.nullInputStream(), out, err);
        assertThat(code).isEqualTo(2);
        assertThat(err.toString()).endsWith("none.jsonl: this file can't be read.\n");
    }

    @Test
    void a_place_that_can_not_be_written_leaves_nothing_behind() throws Exception {
        int code = replay(recorded(), folder.resolve("F.csv").toString(),
                folder.resolve("no/such/place/G.csv").toString());
        assertThat(code).isEqualTo(1);
        assertThat(err.toString()).contains("can't be written").hasLineCount(1);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void past_classes_change_what_is_expected() throws Exception {
        replay(recorded(), folder.resolve("F").toString(), "-");
        String without = out.toString();
        out.setLength(0);
        Path past = Files.createDirectory(folder.resolve("past"));
        Files.writeString(past.resolve("1.jsonl"), recorded());
        int code = new ReplayCommand().run(List.of("-"), folder.resolve("F").toString(), "-",
                Optional.of(past.toString()),
                new ByteArrayInputStream(recorded().getBytes(StandardCharsets.UTF_8)), out, err);
        assertThat(code).isZero();
        assertThat(out.toString()).isNotEqualTo(without);
    }
}
