package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a client may send, and what is said about anything else. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventJsonTest {
    private static final Instant NOW = Instant.parse("2027-03-04T18:30:00Z");

    private static ClassEvent read(String type, String fields) {
        try {
            return EventJson.read(type, Json.read(fields.replace('\'', '"')));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    @Test void a_tap_names_its_seat_and_step() {
        assertThat(read("finish-step", "{'seat':4,'step':'wicks'}"))
                .isEqualTo(new ClassEvent.StepFinished(new SeatNumber(4), new StepId("wicks")));
    }

    @Test void a_note_without_a_seat_belongs_to_the_class() {
        assertThat(read("note", "{'text':'late start'}")).isEqualTo(new ClassEvent.ClassNoted("late start"));
        assertThat(read("note", "{'seat':2,'text':'left-handed'}"))
                .isEqualTo(new ClassEvent.SeatNoted(new SeatNumber(2), "left-handed"));
    }

    @Test void a_guest_may_arrive_without_telling_a_name() {
        assertThat(read("arrive", "{'seat':3}")).isEqualTo(new ClassEvent.SeatArrived(new SeatNumber(3), ""));
        assertThat(read("arrive", "{'seat':3,'name':null}"))
                .isEqualTo(new ClassEvent.SeatArrived(new SeatNumber(3), ""));
    }

    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "finish-step | {'step':'wicks'} | seat | is missing",
        "finish-step | {'seat':'4','step':'wicks'} | seat | must be a whole number, not the text \"4\"",
        "finish-step | {'seat':4.5,'step':'wicks'} | seat | must be a whole number, not the number 4.5",
        "finish-step | {'seat':4.0,'step':'wicks'} | seat | must be a whole number, not the number 4.0",
        "finish-step | {'seat':1e99,'step':'wicks'} | seat | must be a whole number, not the number 1.0E99",
        "finish-step | {'seat':0,'step':'wicks'} | seat | must be 1 to 60, not 0",
        "finish-step | {'seat':61,'step':'wicks'} | seat | must be 1 to 60, not 61",
        "finish-step | {'seat':99999999999999999999,'step':'wicks'} | seat | must be 1 to 60, not 99999999999999999999",
        "finish-step | {'seat':true,'step':'wicks'} | seat | must be a whole number, not true",
        "finish-step | {'seat':[4],'step':'wicks'} | seat | must be a whole number, not a list",
        "finish-step | {'seat':4} | step | is missing",
        "finish-step | {'seat':4,'step':7} | step | must be text in quotes, not the number 7",
        "finish-step | {'seat':4,'step':'W X'} | step | "
                + "the id of a step must be 1 to 40 lower-case letters, digits or hyphens, not \"W X\"",
        "undo | {'seq':-1} | seq | must be 1 or more, not -1",
        "correct-time | {'seq':2,'to':'yesterday'} | to | "
                + "must be a time such as \"2027-03-04T18:30:00Z\", not \"yesterday\"",
        "correct-time | {'seq':2,'to':'+999999999-01-01T00:00:00Z'} | to | must lie between the years 2000 and 2199",
        "read-temperature | {'seat':1,'celsius':1e999} | celsius | must be -60 to 500, not Infinity",
        "read-temperature | {'seat':1,'celsius':'hot'} | celsius | must be a number, not the text \"hot\"",
        "claim | {'seat':1,'helper':''} | helper | must not be empty",
        "claim | {'seat':1,'helper':'much too long'} | helper | is longer than 12 characters",
        "note | {'text':'two\\nlines'} | text | holds a control character",
        "note | {'text':'\\ud83d'} | text | holds half a character (an unpaired surrogate)",
        "finish-stp | {} | type | is not a type of event; did you mean \"finish-step\"?",
        "close | [] | `` | must be an object in braces, not a list",
    })
    void what_is_wrong_is_said_with_its_field(String type, String fields, String field, String sentence) {
        BadField refused = catchThrowableOfType(BadField.class, () -> read(type, fields));

        assertThat(refused.field()).isEqualTo(field);
        assertThat(refused.sentence()).isEqualTo(sentence);
    }

    @Test void texts_are_refused_one_character_beyond_their_limit() {
        assertThat(read("note", "{'text':'" + "x".repeat(500) + "'}")).isInstanceOf(ClassEvent.ClassNoted.class);
        assertThat(catchThrowableOfType(BadField.class, () -> read("note", "{'text':'" + "x".repeat(501) + "'}"))
                .sentence()).isEqualTo("is longer than 500 characters");
        assertThat(catchThrowableOfType(BadField.class,
                () -> read("arrive", "{'seat':1,'name':'" + "x".repeat(41) + "'}")).field()).isEqualTo("name");
    }

    @Test void a_line_for_clients_keeps_the_events_own_number_apart_from_the_one_it_is_about() {
        Recorded undo = new Recorded(9, "c-9", "instructor", NOW, NOW.plusSeconds(2), new ClassEvent.Undone(7));

        assertThat(Json.text(EventJson.line(undo))).isEqualTo("{\"seq\":9,\"type\":\"undo\","
                + "\"at\":\"2027-03-04T18:30:00Z\",\"recordedAt\":\"2027-03-04T18:30:02Z\",\"by\":\"instructor\","
                + "\"target\":7}");
    }

    @Test void a_command_carries_its_own_id_and_the_time_of_the_tap() throws Exception {
        Command command = CommandJson.read(Json.read("{\"commandId\":\"a-1\",\"type\":\"pause\",\"seat\":2,"
                + "\"at\":\"2027-03-04T18:29:00.1234567Z\"}"), "instructor", NOW);

        assertThat(command).isEqualTo(new Command("a-1", "instructor", Instant.parse("2027-03-04T18:29:00.123Z"),
                new ClassEvent.SeatPaused(new SeatNumber(2))));
    }

    @Test void a_command_that_does_not_say_when_was_made_now() throws Exception {
        assertThat(CommandJson.read(Json.read("{\"commandId\":\"a\",\"type\":\"close\"}"), "instructor", NOW).at())
                .isEqualTo(NOW);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{'type':'close'} | commandId",
        "{'commandId':'','type':'close'} | commandId",
        "{'commandId':7,'type':'close'} | commandId",
        "{'commandId':'a\\u0000','type':'close'} | commandId",
        "{'commandId':'a'} | type",
        "{'commandId':'a','type':'create'} | type",
        "{'commandId':'a','type':'close','at':12} | at",
    })
    void a_command_that_is_none_is_told_so(String body, String field) {
        assertThat(catchThrowableOfType(BadField.class,
                () -> CommandJson.read(Json.read(body.replace('\'', '"')), "instructor", NOW)).field())
                .isEqualTo(field);
    }
}
