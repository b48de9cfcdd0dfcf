package benchpace.files.roster;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Finding;
import benchpace.files.Formulae;
import benchpace.plan.SeatNumber;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of guests as spreadsheets and people write them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GuestListTest {
    private static final String LIST = "note,Name,party,seat,candle,shoe size\nno nuts,Åse,choir,2,tin,41\n"
            + ",Bo,choir,,,\n";

    @Test void the_columns_stand_in_any_order_and_others_are_passed_over() {
        GuestList list = GuestList.read(LIST);

        assertThat(list.problems()).isEmpty();
        assertThat(list.guests()).containsExactly(
                new Guest(Optional.of(new SeatNumber(2)), "Åse", "choir", "tin", "no nuts", 2),
                new Guest(Optional.empty(), "Bo", "choir", "", "", 3));
    }

    @ParameterizedTest(name = "{0}, mark {1}, between fields {2}")
    @CsvSource(delimiter = '|', value = {"UTF-8|no|,", "UTF-8|yes|;", "UTF-16LE|yes|,", "UTF-16LE|no|;",
            "UTF-16BE|yes|T", "UTF-16BE|no|,", "windows-1252|no|;", "windows-1252|no|T", "UTF-8|no|T"})
    void a_file_is_read_whatever_it_was_written_in(String charset, String marked, String between) {
        String text = LIST.replace(",", between.equals("T") ? "\t" : between);
        byte[] bytes = ((marked.equals("yes") ? "\uFEFF" : "") + text).getBytes(Charset.forName(charset));

        assertThat(GuestList.read(RosterText.of(bytes).orElseThrow())).isEqualTo(GuestList.read(LIST));
    }

    @Test void what_is_no_text_is_no_roster() {
        assertThat(RosterText.of(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13}))
                .isEmpty();
        assertThat(RosterText.of(new byte[] {'P', 'K', 3, 4, 20, 0, 6, 0})).isEmpty();
        assertThat(RosterText.of(new byte[0])).contains("");
    }

    @Test void what_a_spreadsheet_would_take_for_a_formula_goes_out_as_text_and_comes_back_as_it_was() {
        for (String name : new String[] {"=1+1", "+49", "-Bo", "@Ada", "Ida", "", "'quoted'"}) {
            String out = Formulae.harmless(name);
            assertThat(out).doesNotMatch("^[=+@-].*");
            assertThat(GuestList.read("seat,name\n1,\"" + out + "\"\n").guests()).singleElement()
                    .extracting(Guest::name).isEqualTo(name);
        }
    }

    @Test void two_hundred_names_are_all_read() {
        String names = "name\n" + "Ada\n".repeat(200);
        assertThat(GuestList.read(names).guests()).hasSize(200);
        assertThat(GuestList.read(names).problems()).isEmpty();
    }

    @Test void each_problem_names_its_line_and_the_others_are_read() {
        GuestList list = GuestList.read("seat,name,note\n1,Ida,\n1,Bo,\n2,Noor," + "x".repeat(201) + "\n3,Zo,ok\n");
        assertThat(list.problems().stream().map(Finding::toString)).containsExactly(
                "line 3: names seat 1 a second time", "line 4: the note is longer than 200 characters");
        assertThat(list.guests()).extracting(Guest::name).containsExactly("Ida", "Zo");
    }

    @Test void text_that_is_not_of_this_world_is_still_text() {
        assertThat(RosterText.of("Zoë, José, Łucja\n".getBytes(StandardCharsets.UTF_8))).contains("Zoë, José, Łucja\n");
    }
}
