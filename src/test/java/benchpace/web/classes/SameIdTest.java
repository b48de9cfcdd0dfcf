package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The id of a command names one wish for good: sent again it has its first answer, sent with another wish a 409. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SameIdTest extends OneEvening {
    @BeforeEach void open() {
        for (String step : new String[] {"welcome", "wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.tap(id, TestBoard.opening(step)).ok();
        }
        for (int seat = 1; seat <= 4; seat++) {
            board.tap(id, TestBoard.finish(seat, "pour")).ok();
        }
    }

    private Reply shelf(String path, ObjectNode body) {
        return board.post("/api/" + path, Json.text(body), board.instructor());
    }

    private static ObjectNode wish(String command, int place) {
        return Json.object().put("commandId", command).put("shelf", "Upper").put("place", place)
                .put("claim", "maple 42").put("name", "Io");
    }

    private String leave(int seat) {
        return "classes/" + id + "/seats/" + seat + "/leave";
    }

    @Test void a_tap_for_another_seat_step_or_of_another_kind_is_refused() {
        ObjectNode tap = TestBoard.finish(5, "wicks").put("commandId", "x");
        long seq = board.tap(id, tap).seq();

        board.tap(id, tap.deepCopy().put("seat", 6)).problem(409, "id-taken").detail("Event " + seq);
        board.tap(id, tap.deepCopy().put("step", "fragrance")).problem(409, "id-taken");
        board.tap(id, TestBoard.command("pause").put("seat", 5).put("commandId", "x")).problem(409, "id-taken");
        assertThat(board.state(id).json().get("seq").longValue()).isEqualTo(seq);
    }

    /** A page sets the time of a tap right once it has heard the board's, and may have sent it before. */
    @Test void a_tap_that_says_another_time_is_still_the_same_tap() {
        ObjectNode tap = TestBoard.finish(5, "wicks").put("commandId", "x");
        long seq = board.tap(id, tap).seq();

        Reply again = board.tap(id, tap.put("at", TestClock.EVENING.plusSeconds(1).toString()));

        assertThat(again.seq()).isEqualTo(seq);
        assertThat(again.json().get("duplicate").booleanValue()).isTrue();
    }

    @Test void leaving_with_an_id_that_was_for_another_seat_place_or_guest_is_refused() {
        shelf(leave(3), wish("x", 5)).ok();

        shelf(leave(4), wish("x", 5)).problem(409, "id-taken");
        shelf(leave(3), wish("x", 6)).problem(409, "id-taken");
        shelf(leave(3), wish("x", 5).put("name", "Ed")).problem(409, "id-taken");
        shelf(leave(3), wish("x", 5).put("claim", "birch 11")).problem(409, "id-taken");
        shelf(leave(3), wish("x", 5)).ok();
        assertThat(board.state(id).json().at("/seats/3/state").textValue()).isNotEqualTo("left");
        assertThat(board.get("/api/shelf", board.helper()).json().get("entries")).hasSize(1);
    }

    @Test void at_the_shelf_an_id_stands_for_one_act_on_one_candle() {
        int first = shelf(leave(1), wish("a", 1)).ok().json().get("id").intValue();
        int second = shelf(leave(2), wish("b", 2).put("claim", "birch 11")).ok().json().get("id").intValue();
        ObjectNode collect = Json.object().put("commandId", "c").put("handTested", true);
        shelf("shelf/" + first + "/collect", collect).ok();
        ObjectNode move = Json.object().put("commandId", "m").put("shelf", "Upper").put("place", 7);
        shelf("shelf/" + second + "/move", move).ok();

        shelf("shelf/" + first + "/collect", collect).ok();
        shelf("shelf/collect", collect.deepCopy().put("claim", "maple 42")).ok();
        shelf("shelf/collect", collect.deepCopy().put("claim", "birch 11")).problem(409, "id-taken");
        shelf("shelf/" + second + "/collect", collect).problem(409, "id-taken");
        shelf("shelf/" + first + "/undo", collect).problem(409, "id-taken");
        shelf("shelf/" + second + "/move", move).ok();
        shelf("shelf/" + second + "/move", move.deepCopy().put("place", 8)).problem(409, "id-taken");
        shelf("shelf/" + second + "/take-back", move).problem(409, "id-taken");
    }
}
