package benchpace.web.screen.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.board.WatchedLog;
import benchpace.board.attempt.Faults;
import gg.jte.output.StringOutput;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A part of a page that cannot be drawn says so in its place and leaves the others alone. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PartsTest {
    private final Faults faults = new Faults();

    private static String fail() {
        throw new IllegalStateException("nobody sits there");
    }

    private static String tooDeep() {
        return tooDeep() + "!";
    }

    private Parts drawn() {
        Parts parts = new Parts("thursday", faults);
        parts.add("now", () -> "<p>Pour</p>");
        parts.add("lines", PartsTest::fail);
        parts.add("help", PartsTest::tooDeep);
        parts.addQuietly("known", PartsTest::fail);
        parts.add("notes", () -> "<p>None</p>");
        return parts;
    }

    @Test void what_cannot_be_drawn_is_told_in_its_place_and_the_rest_is_there() {
        try (WatchedLog log = new WatchedLog(Parts.class.getName())) {
            assertThat(drawn().html()).containsEntry("now", "<p>Pour</p>").containsEntry("notes", "<p>None</p>")
                    .containsEntry("lines", "<span class=\"hint\">This part cannot be shown just now.</span>")
                    .containsEntry("help", "<span class=\"hint\">This part cannot be shown just now.</span>")
                    .containsEntry("known", "");
            assertThat(log.records()).hasSize(3);
        }
    }

    @Test void it_is_noted_once_however_often_the_page_is_drawn() {
        try (WatchedLog log = new WatchedLog(Parts.class.getName())) {
            for (int i = 0; i < 20; i++) {
                drawn();
            }
            assertThat(log.records()).hasSize(3)
                    .allSatisfy(record -> assertThat(record.getMessage()).contains("thursday"));
        }
    }

    @Test void a_part_stands_on_the_page_as_it_is_sent_later() {
        StringOutput page = new StringOutput();

        drawn().of("now").writeTo(page);

        assertThat(page.toString()).isEqualTo("<p>Pour</p>");
        assertThatThrownBy(() -> drawn().of("then")).isInstanceOf(IllegalArgumentException.class);
    }
}
