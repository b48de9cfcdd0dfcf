package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.plan.Numbering;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.TableShape;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The promise to old files: a class recorded with the first version, every event there was then at least once, is still
 * read, still means the same, and would still be written the same. The file is never edited; a later version adds
 * its own.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventLogFileTest {
    private record Line(JsonNode stored, Recorded event) { }

    /** Of all versions. */
    private static List<Line> lines() {
        return Stream.of("events-v1.jsonl", "events-v2.jsonl", "events-v3.jsonl")
                .flatMap(file -> lines(file).stream()).toList();
    }

    private static List<Line> lines(String file) {
        try (InputStream in = EventLogFileTest.class.getResourceAsStream(file)) {
            List<Line> lines = new ArrayList<>();
            for (String text : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
                JsonNode line = Json.read(text);
                lines.add(new Line(line, new Recorded(line.get("seq").longValue(), line.get("commandId").textValue(),
                        line.get("by").textValue(), Instant.parse(line.get("at").textValue()),
                        Instant.parse(line.get("recordedAt").textValue()),
                        EventJson.read(line.get("type").textValue(), line.get("fields")))));
            }
            return lines;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static LiveClass folded(String file) {
        return LiveClass.of(lines(file).stream().map(Line::event).toList());
    }

    @Test void it_holds_every_event_there_is() {
        assertThat(lines()).extracting(line -> (Object) line.event.event().getClass())
                .containsAll(Arrays.stream(ClassEvent.class.getDeclaredClasses())
                        .filter(type -> type.isRecord() && ClassEvent.class.isAssignableFrom(type))
                        .<Object>map(type -> type).toList());
        assertThat(lines()).extracting(line -> line.stored.get("type").textValue())
                .containsAll(EventJson.types());
    }

    @Test void each_would_still_be_written_with_all_it_said() throws IOException {
        for (Line line : lines()) {
            assertThat(EventJson.type(line.event.event())).isEqualTo(line.stored.get("type").textValue());
            assertKeeps("event " + line.event.seq(), line.stored.get("fields"),
                    Json.read(Json.text(EventJson.fields(line.event.event()))));
        }
    }

    /** Fields may have been added since; none may be gone or say something else. */
    private static void assertKeeps(String where, JsonNode then, JsonNode now) {
        if (then.isObject() && now != null && now.isObject()) {
            then.properties().forEach(field ->
                    assertKeeps(where + "/" + field.getKey(), field.getValue(), now.get(field.getKey())));
        } else if (then.isArray() && now != null && now.isArray() && now.size() == then.size()) {
            for (int i = 0; i < then.size(); i++) {
                assertKeeps(where + "/" + i, then.get(i), now.get(i));
            }
        } else {
            assertThat(now).as(where).isEqualTo(then);
        }
    }

    @Test void it_adds_up_to_the_class_it_was() {
        LiveClass live = folded("events-v1.jsonl");

        assertThat(live.name()).isEqualTo("A Thursday");
        assertThat(live.seats()).hasSize(4);
        assertThat(live.closedAt()).contains(Instant.parse("2027-03-04T20:10:00Z"));
        Seat first = live.seat(new SeatNumber(1)).orElseThrow();
        assertThat(first.name()).isEqualTo("Ida");
        assertThat(first.finishes()).containsOnlyKeys(new StepId("wicks"), new StepId("pour"));
        assertThat(first.finishes().get(new StepId("wicks")).at()).isEqualTo(Instant.parse("2027-03-04T18:39:30Z"));
        assertThat(first.readings()).singleElement().extracting(Seat.Reading::celsius).isEqualTo(61.5);
        assertThat(first.judgedSetAt()).isPresent();
        Seat second = live.seat(new SeatNumber(2)).orElseThrow();
        assertThat(second.finishes()).containsOnlyKeys(new StepId("wicks"));
        assertThat(second.claim()).isEmpty();
        assertThat(live.seat(new SeatNumber(3)).orElseThrow().finishes()).isEmpty();
        assertThat(live.seat(new SeatNumber(4)).orElseThrow().presence()).isEqualTo(Seat.Presence.LEFT);
        assertThat(live.notes()).extracting(Seat.Note::text).containsExactly("The melter was late.");
    }

    @Test void a_clock_set_right_in_it_still_moves_what_it_moved() {
        LiveClass live = folded("events-v2.jsonl");

        assertThat(live.openedAt(new StepId("welcome"))).contains(Instant.parse("2027-03-04T18:31:00Z"));
        assertThat(live.openedAt(new StepId("wicks"))).contains(Instant.parse("2027-03-04T18:36:00Z"));
        assertThat(live.seat(new SeatNumber(1)).orElseThrow().finishes().get(new StepId("wicks")).at())
                .isEqualTo(Instant.parse("2027-03-04T18:39:00Z"));
        assertThat(live.history()).extracting(Recorded::recordedAt).isSorted();
    }

    @Test void a_class_set_up_again_and_corrected_in_it_is_still_as_it_was_left() {
        LiveClass live = folded("events-v3.jsonl");

        assertThat(live.name()).isEqualTo("A Thursday at the chandlery");
        assertThat(live.promisedEnd()).isEqualTo(Instant.parse("2027-03-04T20:30:00Z"));
        assertThat(live.plan().table()).isEqualTo(TableShape.ROUNDS);
        assertThat(live.setup().numbering()).isEqualTo(Numbering.CLOCKWISE_FROM_RIGHT);
        assertThat(live.seats()).extracting(s -> s.number().value()).containsExactly(1, 2, 3, 5, 6);
        assertThat(live.seat(new SeatNumber(1)).orElseThrow().mind()).isEqualTo("no nuts");
        assertThat(live.seat(new SeatNumber(2)).orElseThrow().name()).isEqualTo("Bodil");
        assertThat(live.seat(new SeatNumber(6)).orElseThrow().party()).isEqualTo("choir");
        assertThat(live.candlesToMake()).containsExactlyInAnyOrderEntriesOf(Map.of("amber-soy", 4, "tin-paraffin", 1));
    }
}
