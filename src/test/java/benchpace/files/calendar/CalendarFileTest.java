package benchpace.files.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.WaitEvent;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfPlace;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * RFC 5545. Folding: section 3.1, at most 75 octets a line without its break, characters kept whole; the vectors count
 * out that rule ("SUMMARY:" and 67 or 68 letters, or 40 letters of two octets). Everything is read back by ical4j.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalendarFileTest {
    private static final Instant SEVEN = Instant.parse("2027-03-04T19:00:00Z");

    @Test void seventy_five_octets_stay_on_one_line_and_the_next_begins_another() {
        assertThat(octets(folded("SUMMARY:" + "x".repeat(67)))).containsExactly(75);
        assertThat(octets(folded("SUMMARY:" + "x".repeat(68)))).containsExactly(75, 2);
    }

    @Test void a_character_of_two_octets_is_not_torn_apart() {
        assertThat(octets(folded("SUMMARY:" + "é".repeat(40)))).containsExactly(74, 15);
    }

    @Test void a_character_of_four_octets_is_not_torn_apart() {
        String text = "SUMMARY:" + "🕯".repeat(30);
        assertThat(octets(folded(text))).allMatch(n -> n <= 75);
        assertThat(folded(text).replace("\r\n ", "").strip()).isEqualTo(text);
    }

    /** RFC 5545 section 3.3.11. */
    @Test void text_is_escaped() {
        assertThat(CalendarFile.escape("a\\b;c,d\ne\r\nf\u0007")).isEqualTo("a\\\\b\\;c\\,d\\ne\\nf");
    }

    @Test void the_class_its_breaks_and_the_shelf_are_read_back() throws Exception {
        ShelfEntry candle = new ShelfEntry(new EntryId(3), "thu", new SeatNumber(4), new ShelfPlace("Window", 1),
                SEVEN.plusSeconds(7200), Instant.parse("2027-03-18T23:30:00Z"), new ClaimWord("maple", 42), "Robin",
                SEVEN, ShelfEntry.NOT_YET);
        List<CalendarEntry> entries = new ClassCalendar("thu", "Candles; soy, and more", "Loft\nSecond floor", SEVEN,
                SEVEN.plusSeconds(7200))
                .with(List.of(new WaitEvent.ClassBreak(SEVEN.plusSeconds(3600), SEVEN.plusSeconds(4200),
                        new ActivityId("toast"), "A toast", "kitchen", List.of(new SeatNumber(4)), List.of()),
                        new WaitEvent.FirstReady(SEVEN.plusSeconds(5000), SEVEN, SEVEN.plusSeconds(6000),
                                List.of(new SeatNumber(4)))))
                .withShelf(List.of(candle), ZoneId.of("Europe/Vienna")).entries();
        String text = CalendarFile.text(entries, SEVEN);
        assertThat(text).doesNotContain("Robin");
        Calendar read = new CalendarBuilder().build(new StringReader(text));
        assertThat(read.validate().hasErrors()).isFalse();
        List<VEvent> events = read.getComponents(Component.VEVENT);
        assertThat(events).hasSize(4);
        assertThat(value(events.get(0), Property.SUMMARY)).isEqualTo("Candles; soy, and more");
        assertThat(value(events.get(0), Property.LOCATION)).isEqualTo("Loft\nSecond floor");
        assertThat(value(events.get(0), Property.DTSTART)).isEqualTo("20270304T190000Z");
        assertThat(value(events.get(0), Property.DTEND)).isEqualTo("20270304T210000Z");
        assertThat(value(events.get(1), Property.DTSTART)).isEqualTo("20270304T200000Z");
        assertThat(value(events.get(3), Property.DTSTART)).as("the day in Vienna").isEqualTo("20270319");
        assertThat(events.stream().map(e -> value(e, Property.UID))).doesNotHaveDuplicates();
    }

    @net.jqwik.api.Property(tries = 300)
    void whatever_is_typed_comes_back(@ForAll @StringLength(max = 200) String typed) throws Exception {
        String kept = typed.codePoints().filter(c -> !Character.isISOControl(c) && Character.isDefined(c)
                        && Character.getType(c) != Character.SURROGATE && c < 0xFFF0)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        // letters around it, as ical4j itself trims blanks at the ends of a value
        String summary = "a" + kept + "z";
        String text = CalendarFile.text(List.of(new CalendarEntry.AllDay("u1", LocalDate.of(2027, 3, 4), summary, "",
                "")), SEVEN);
        assertThat(octets(text)).allMatch(n -> n <= 75);
        Calendar read = new CalendarBuilder().build(new StringReader(text));
        VEvent event = read.<VEvent>getComponents(Component.VEVENT).get(0);
        assertThat(value(event, Property.SUMMARY)).isEqualTo(summary);
        assertThat(value(event, Property.DTEND)).isEqualTo("20270305");
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).orElseThrow().getValue();
    }

    private static String folded(String content) {
        StringBuilder out = new StringBuilder();
        CalendarFile.line(out, content);
        return out.toString();
    }

    private static List<Integer> octets(String text) {
        assertThat(text).endsWith("\r\n");
        return List.of(text.substring(0, text.length() - 2).split("\r\n")).stream()
                .map(l -> l.getBytes(StandardCharsets.UTF_8).length).toList();
    }
}
