package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.OneEvening;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The one big undo takes back what was tapped on the same device, and nothing that others said. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UndoOfADeviceTest extends OneEvening {
    private String table;
    private String door;

    @BeforeEach void open() {
        table = board.pair(Json.object().put("pin", TestBoard.PIN));
        door = board.pair(Json.object().put("pin", TestBoard.PIN));
        board.tap(id, opening("wicks"), table).ok();
    }

    /** The number and the words of what one tap on a device takes back; "null" if there is nothing. */
    private String undo(String device) {
        JsonNode undo = board.get("/api/classes/" + id, device).ok().json().path("undo");
        return undo.isMissingNode() ? "nothing" : undo.get("seq") + " " + undo.get("words").textValue();
    }

    private String page(String device) {
        return board.get("/classes/" + id + "/instructor", device).ok().body();
    }

    @Test void each_of_two_tablets_takes_back_its_own_last_tap() {
        long seated = board.tap(id, finish(3, "vessel"), table).seq();
        long other = board.tap(id, finish(4, "vessel"), door).seq();

        assertThat(undo(table)).startsWith(seated + " seat 3");
        assertThat(undo(door)).startsWith(other + " seat 4");
        assertThat(page(table)).contains("data-seq=\"" + seated + "\"").contains("seat 3");
        assertThat(page(door)).contains("data-seq=\"" + other + "\"").contains("seat 4");
    }

    @Test void a_helpers_claim_and_sorted_are_never_the_instructors_undo() {
        long tapped = board.tap(id, finish(3, "vessel"), table).seq();
        board.tap(id, command("claim").put("seat", 5).put("helper", "AB"), board.helper()).ok();
        board.tap(id, command("sorted").put("seat", 5).put("helper", "AB"), board.helper()).ok();

        assertThat(undo(table)).startsWith(tapped + " seat 3");
    }

    @Test void who_has_tapped_nothing_has_nothing_to_take_back_and_the_button_says_so() {
        assertThat(undo(door)).isEqualTo("nothing");
        assertThat(page(door)).containsPattern("id=\"undo-button\" disabled").contains("nothing tapped here");
    }

    @Test void after_an_undo_the_tap_before_it_is_the_next_and_an_undo_is_none() {
        long first = board.tap(id, finish(3, "vessel"), table).seq();
        long second = board.tap(id, finish(4, "vessel"), table).seq();
        board.tap(id, finish(5, "vessel"), door).ok();

        board.tap(id, command("undo").put("seq", second), table).ok();

        assertThat(undo(table)).startsWith(first + " seat 3");
    }

    @Test void what_was_tapped_before_a_restart_still_belongs_to_its_device() {
        long tapped = board.tap(id, finish(3, "vessel"), table).seq();
        board.tap(id, finish(4, "vessel"), door).ok();

        board.restart();

        assertThat(undo(table)).startsWith(tapped + " seat 3");
        assertThat(undo(door)).contains("seat 4");
    }

    @Test void a_device_paired_anew_is_another_one() {
        board.tap(id, finish(3, "vessel"), table).ok();

        assertThat(undo(board.pair(Json.object().put("pin", TestBoard.PIN)))).isEqualTo("nothing");
    }

    @Test void by_its_number_any_event_can_be_taken_back_from_anywhere() {
        long tapped = board.tap(id, finish(3, "vessel"), table).seq();

        board.tap(id, command("undo").put("seq", tapped), door).ok();

        assertThat(board.state(id).json().get("seats").get(2).get("finished")).isEmpty();
    }

    @Test void a_closed_class_is_opened_again_by_the_device_that_closed_it() {
        board.tap(id, finish(3, "vessel"), door).ok();
        long closed = board.tap(id, command("close"), table).seq();
        board.tap(id, command("note").put("text", "draughty"), table).ok();

        assertThat(undo(table)).startsWith(closed + " closed the class");
        assertThat(undo(door)).isEqualTo("nothing");
    }

    @Test void the_mark_of_a_device_is_told_with_its_events_and_opens_nothing() {
        board.tap(id, finish(3, "vessel"), table).ok();

        String line = board.get("/api/classes/" + id + "/events?after=2", table).ok().body();
        assertThat(line).containsPattern("\"device\":\"[0-9a-f]{12}\"").doesNotContain(table);
    }
}
