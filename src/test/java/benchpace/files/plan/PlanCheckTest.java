package benchpace.files.plan;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.roster.Demo;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanCheckTest {
    @TempDir Path folder;
    private final StringBuilder out = new StringBuilder();
    private final StringBuilder err = new StringBuilder();

    private int check(String path, String input) throws IOException {
        return PlanCheck.run(path, new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), out, err);
    }

    @Test void nothing_is_said_of_a_sound_plan() throws IOException {
        String sound = Json.pretty(PlanFile.write(Demo.eveningPlan()));
        Path file = Files.writeString(folder.resolve("plan.json"), sound);

        assertThat(check(file.toString(), "")).isZero();
        assertThat(check("-", sound)).isZero();
        assertThat(out.toString() + err).isEmpty();
    }

    @Test void each_problem_has_a_line_naming_file_and_place() throws IOException {
        String text = Json.text(PlanFile.write(Demo.eveningPlan()).put("seats", 99).put("tabel", "rows"));
        Path file = Files.writeString(folder.resolve("plan.json"), text);

        assertThat(check(file.toString(), "")).isEqualTo(2);
        assertThat(err.toString()).isEqualTo(file + ": /seats: must be 1 to 60, not 99\n"
                + file + ": /tabel: is not a field here; did you mean \"table\"?\n");
        assertThat(out.toString()).isEmpty();
    }

    @Test void a_picture_that_is_none_is_told_with_the_one_that_was_meant() throws IOException {
        ObjectNode plan = PlanFile.write(Demo.eveningPlan());
        ((ObjectNode) plan.at("/steps/2")).put("picture", "wik");

        assertThat(check("-", Json.text(plan))).isEqualTo(2);
        assertThat(err.toString()).startsWith("standard input: /steps/2/picture: must be one of \"welcome\", \"talk\"")
                .contains("not \"wik\"; did you mean \"wick\"?").hasLineCount(1);
    }

    @Test void text_that_is_no_json_is_told_of_by_line() throws IOException {
        assertThat(check("-", "{\n\"id\": oops}")).isEqualTo(2);
        assertThat(err.toString()).startsWith("standard input: line 2, column ")
                .contains("is not sound JSON").hasLineCount(1);
    }

    @Test void a_file_that_cannot_be_read_is_told_of() throws IOException {
        Path none = folder.resolve("none.json");

        assertThat(check(none.toString(), "")).isEqualTo(2);
        assertThat(check(folder.toString(), "")).isEqualTo(2);
        assertThat(check("no\0name", "")).isEqualTo(2);
        assertThat(err.toString()).isEqualTo(none + ": there is no such file\n" + folder
                + ": is a folder, not a plan\nno\0name: is not the name of a file\n");
    }
}
