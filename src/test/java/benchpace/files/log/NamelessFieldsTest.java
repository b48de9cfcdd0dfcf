package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NamelessFieldsTest {
    @Test void what_bears_no_words_stays_as_it_stands_there() {
        assertThat(NamelessFields.of("create", "{\"name\":\"Thursday\",\"startsAt\":\"tea time\",\"plan\":3,\"seats\":["
                + "{\"seat\":1,\"name\":\"Ida\",\"party\":\"Mill\",\"note\":\"nuts\",\"candle\":\"fern\"},\"Ida\"]}"))
                .contains("{\"name\":\"Thursday\",\"startsAt\":\"tea time\",\"plan\":3,\"seats\":["
                        + "{\"seat\":1,\"candle\":\"fern\",\"name\":\"\"},{\"name\":\"\"}]}");
        assertThat(NamelessFields.of("correct-guest", "{\"seat\":-1,\"name\":\"Ida\",\"note\":\"nuts\"}"))
                .contains("{\"seat\":-1,\"name\":\"\"}");
    }

    @Test void that_something_was_told_stays_known() {
        assertThat(NamelessFields.of("arrive", "{\"seat\":0,\"name\":\"Ida\"}"))
                .contains("{\"seat\":0,\"name\":\"…\"}");
        assertThat(NamelessFields.of("arrive", "{\"seat\":0,\"name\":\"\"}")).contains("{\"seat\":0,\"name\":\"\"}");
        assertThat(NamelessFields.of("note", "{\"seat\":0,\"text\":\"Ida left\"}"))
                .contains("{\"seat\":0,\"text\":\"…\"}");
    }

    @Test void words_in_fields_that_nobody_knows_go_too() {
        assertThat(NamelessFields.of("add-seat", "{\"seat\":4,\"nbme\":\"Ida\",\"of\":{\"name\":\"Ida\"}}"))
                .contains("{\"seat\":4,\"name\":\"\"}");
        assertThat(NamelessFields.of("set-up", "{\"seats\":{\"1\":\"Ida\"}}")).contains("{}");
    }

    @Test void what_is_no_text_of_fields_cannot_be_told() {
        assertThat(NamelessFields.of("note", "{\"text\":\"Ida")).isEmpty();
        assertThat(NamelessFields.of("note", "[\"Ida\"]")).isEmpty();
        assertThat(NamelessFields.of("note", "")).isEmpty();
    }

    @Test void done_twice_it_is_done_once() {
        String once = NamelessFields.of("create", "{\"seats\":[{\"seat\":1,\"name\":\"Ida\",\"candle\":\"fern\"},"
                + "null,\"Ida\"]}").orElseThrow();
        assertThat(NamelessFields.of("create", once)).contains(once);
    }
}
