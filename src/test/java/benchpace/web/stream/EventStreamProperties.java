package benchpace.web.stream;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever text a guest, a helper or an organiser typed: it stays inside its one event. */
class EventStreamProperties {

    @Property void any_text_is_one_event(@ForAll String text) {
        String storable = text.codePoints().filter(c -> c < 0xD800 || c > 0xDFFF)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();

        assertThat(EventStreamTest.read(EventStream.event("part", "3", storable))).containsExactly(
                new EventReader.Event("part", "3", storable.replace("\r\n", "\n").replace('\r', '\n')));
    }
}
