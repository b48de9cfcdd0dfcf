package benchpace.web.stream;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The writer against a reader that follows the HTML Living Standard, section 9.2.6. The reader itself is held to that
 * section's own examples (https://html.spec.whatwg.org/multipage/server-sent-events.html).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventStreamTest {

    static List<EventReader.Event> read(String text) {
        try {
            EventReader reader = new EventReader(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
            List<EventReader.Event> events = new ArrayList<>();
            for (Optional<EventReader.Event> e = reader.next(); e.isPresent(); e = reader.next()) {
                events.add(e.get());
            }
            return events;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static EventReader.Event message(String id, String data) {
        return new EventReader.Event("message", id, data);
    }

    // ---- the standard's examples, which the reader must pass before it may judge

    @Test void the_reader_joins_data_lines() {
        assertThat(read("data: YHOO\ndata: +2\ndata: 10\n\n")).containsExactly(message("", "YHOO\n+2\n10"));
    }

    @Test void the_reader_passes_comments_keeps_ids_and_discards_an_unfinished_event() {
        String stream = ": test stream\n\ndata: first event\nid: 1\n\ndata:second event\nid\n\ndata:  third event";

        assertThat(read(stream)).containsExactly(message("1", "first event"), message("", "second event"));
        assertThat(read(stream + "\n\n")).endsWith(message("", " third event")).hasSize(3);
    }

    @Test void the_reader_takes_a_field_without_a_colon_as_empty() {
        assertThat(read("data\n\ndata\ndata\n\ndata:")).containsExactly(message("", ""), message("", "\n"));
    }

    @Test void the_reader_drops_one_space_after_the_colon() {
        assertThat(read("data:test\n\ndata: test\n\n")).containsExactly(message("", "test"), message("", "test"));
    }

    @Test void the_reader_names_events() {
        assertThat(read("event: add\ndata: 73857293\n\nevent: remove\ndata: 2153\n\nevent: add\ndata: 113411\n\n"))
                .containsExactly(new EventReader.Event("add", "", "73857293"),
                        new EventReader.Event("remove", "", "2153"), new EventReader.Event("add", "", "113411"));
    }

    @Test void the_reader_ends_lines_at_cr_lf_and_both_and_skips_one_byte_order_mark() {
        assertThat(read("\uFEFFdata: a\rdata: b\r\ndata: c\n\n")).containsExactly(message("", "a\nb\nc"));
    }

    // ---- our writer

    @Test void what_is_written_is_what_is_read() {
        assertThat(read(EventStream.event("state", "17", "{\"seq\":17}")))
                .containsExactly(new EventReader.Event("state", "17", "{\"seq\":17}"));
        assertThat(read(EventStream.event("add", "", "YHOO\n+2\n10")))
                .containsExactly(new EventReader.Event("add", "", "YHOO\n+2\n10"));
        assertThat(read(EventStream.event("a", "", " two spaces kept"))).extracting(EventReader.Event::data)
                .containsExactly(" two spaces kept");
        assertThat(read(EventStream.event("a", "", ":no comment"))).extracting(EventReader.Event::data)
                .containsExactly(":no comment");
    }

    @Test void empty_parts_and_trailing_line_ends_are_kept() {
        assertThat(read(EventStream.event("a", "", "x\n\n"))).extracting(EventReader.Event::data)
                .containsExactly("x\n\n");
        assertThat(read(EventStream.event("a", "", "\n"))).extracting(EventReader.Event::data).containsExactly("\n");
    }

    /** An event with nothing to say still has to arrive: it empties a part of the page. */
    @Test void an_empty_part_arrives_as_an_empty_event() {
        assertThat(read(EventStream.event("notes", "", ""))).containsExactly(new EventReader.Event("notes", "", ""));
    }

    @Test void no_text_can_end_its_event_or_forge_another() {
        for (String guest : List.of("x\n\nevent: y\ndata: z", "x\r\revent: y\rdata: z", "x\r\n\r\nevent: y\r\ndata: z",
                "\n\nid: 99\n\n", "x\n:comment\n\nretry: 1")) {
            List<EventReader.Event> events = read(EventStream.event("seat-1", "", guest)
                    + EventStream.event("state", "5", "{}"));

            assertThat(events).hasSize(2);
            assertThat(events.get(0).type()).isEqualTo("seat-1");
            assertThat(events.get(0).data()).isEqualTo(guest.replace("\r\n", "\n").replace('\r', '\n'));
            assertThat(events.get(1)).isEqualTo(new EventReader.Event("state", "5", "{}"));
        }
    }

    @Test void names_and_ids_of_several_lines_are_a_bug() {
        for (String bad : List.of("a\nb", "a\rb", "a\0b")) {
            assertThatThrownBy(() -> EventStream.event(bad, "", "")).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> EventStream.event("a", bad, "")).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test void text_is_sent_as_utf_8() throws IOException {
        ByteArrayOutputStream sent = new ByteArrayOutputStream();

        new EventStream(sent).send(EventStream.event("a", "", "Zoë 🕯"));

        assertThat(read(sent.toString(StandardCharsets.UTF_8))).extracting(EventReader.Event::data)
                .containsExactly("Zoë 🕯");
    }
}
