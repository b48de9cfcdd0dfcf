package benchpace.files.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.files.BadFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaxFileTest {
    private static String builtIn() throws IOException {
        try (InputStream in = WaxFile.class.getResourceAsStream("/benchpace/cure/waxes.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static void read(String json) throws IOException {
        WaxFile.read("waxes.json", new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void the_five_families_of_wax_are_there_and_none_claims_to_be_calibrated() {
        assertThat(WaxFile.builtIn()).extracting(w -> w.wax().id())
                .containsExactly("paraffin", "soy", "beeswax", "coconut-rapeseed", "palm");
        assertThat(WaxFile.builtIn()).noneMatch(w -> w.wax().calibrated());
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', value = {
        "\"value\": 890, \"value\": \"dense\", densityKgM3",
        "\"value\": 890, \"value\": 9, density",
        "\"source\", \"origin\", source",
        "\"id\", \"ident\", id",
        "\"waxes\", \"wax\", waxes",
        "{, [, JSON"})
    void a_wax_file_that_is_wrong_is_refused_with_its_place(String what, String by, String word) throws IOException {
        String wrong = builtIn().replaceFirst(java.util.regex.Pattern.quote(what), by);
        assertThatThrownBy(() -> read(wrong)).isInstanceOf(BadFile.class).hasMessageContaining(word);
    }
}
