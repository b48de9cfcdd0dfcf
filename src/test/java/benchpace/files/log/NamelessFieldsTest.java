package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
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

    @Test void the_last_appointment_that_can_be_is_found_whatever_else_is_damaged() {
        assertThat(NamelessFields.lastAppointment("{\"plan\":3,\"startsAt\":\"2027-03-04T18:30:00Z\","
                + "\"promisedEnd\":\"2027-03-04T20:30:00Z\"}")).contains(Instant.parse("2027-03-04T20:30:00Z"));
        assertThat(NamelessFields.lastAppointment("{\"startsAt\":\"2027-03-04T18:30:00Z\",\"promisedEnd\":7}"))
                .contains(Instant.parse("2027-03-04T18:30:00Z"));
        for (String none : List.of("{}", "[]", "\"tea time\"", "{\"startsAt\":\"2027-03-0", "",
                "{\"startsAt\":\"" + Instant.MAX + "\"}", "{\"startsAt\":\"" + Instant.MIN + "\"}")) {
            assertThat(NamelessFields.lastAppointment(none)).as(none).isEmpty();
        }
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
