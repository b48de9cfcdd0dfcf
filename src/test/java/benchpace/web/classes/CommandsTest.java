package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.freshId;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.OneEvening;
import benchpace.web.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Commands over HTTP: what each does, what is told apart when one is refused, and that repeating is harmless. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CommandsTest extends OneEvening {
    private Reply tap(ObjectNode command) {
        return board.tap(id, command);
    }

    private JsonNode seat(int number) {
        return board.state(id).json().get("seats").get(number - 1);
    }

    private void allPour() {
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            tap(opening(step)).ok();
            for (int seat = 1; seat <= 8; seat++) {
                tap(finish(seat, step)).ok();
            }
        }
    }

    private static ObjectNode at(String type, int seat) {
        return command(type).put("seat", seat);
    }

    // ---- each type

    @Test void a_led_step_opens() {
        tap(opening("wicks")).ok();

        assertThat(board.state(id).json().get("steps").get(2).get("open").booleanValue()).isTrue();
    }

    @Test void a_seat_finishes_a_step() {
        tap(opening("wicks")).ok();

        Reply reply = tap(finish(4, "wicks")).ok();

        assertThat(reply.json().get("seq").longValue()).isEqualTo(3);
        assertThat(reply.json().get("duplicate").booleanValue()).isFalse();
        assertThat(seat(4).get("finished")).extracting(JsonNode::textValue).containsExactly("wicks");
    }

    @Test void a_tap_is_taken_back() {
        tap(opening("wicks")).ok();
        long seq = tap(finish(4, "wicks")).seq();

        tap(command("undo").put("seq", seq)).ok();

        assertThat(seat(4).get("finished")).isEmpty();
        tap(command("undo").put("seq", seq)).problem(409, "already-so");
        tap(command("undo").put("seq", 999)).problem(422, "no-such-event");
        tap(command("undo").put("seq", 1)).problem(409, "cannot-undo");
    }

    @Test void a_seat_pauses_and_comes_back() {
        tap(at("pause", 3)).ok();
        assertThat(seat(3).get("state").textValue()).isEqualTo("paused");

        tap(at("resume", 3)).ok();
        assertThat(seat(3).get("state").textValue()).isNotEqualTo("paused");
        tap(at("resume", 3)).problem(409, "not-so");
    }

    @Test void a_late_guest_arrives_with_a_name() {
        tap(at("expect", 5)).ok();
        assertThat(seat(5).get("state").textValue()).isEqualTo("expected");

        tap(at("arrive", 5).put("name", "Noor")).ok();

        assertThat(seat(5).get("name").textValue()).isEqualTo("Noor");
        assertThat(seat(5).get("state").textValue()).isNotEqualTo("expected");
    }

    @Test void a_guest_leaves() {
        tap(at("leave", 6)).ok();

        assertThat(seat(6).get("state").textValue()).isEqualTo("left");
        tap(finish(6, "vessel")).problem(409, "not-at-table");
    }

    @Test void two_seats_share_a_candle() {
        tap(at("pair", 1).put("with", 2)).ok();

        assertThat(seat(2).get("sharesWith").intValue()).isEqualTo(1);
        tap(finish(2, "vessel")).problem(409, "shares-candle");
        tap(at("unpair", 2)).ok();
        assertThat(seat(2).get("sharesWith").isNull()).isTrue();
    }

    @Test void a_temperature_is_read_once_something_is_poured() {
        tap(at("read-temperature", 1).put("celsius", 55.5)).problem(409, "not-poured");
        allPour();

        tap(at("read-temperature", 1).put("celsius", 55.5)).ok();

        tap(at("read-temperature", 1).put("celsius", 300)).problem(422, "absurd-value");
        tap(at("read-temperature", 1).put("celsius", 9999)).problem(422, "bad-value");
    }

    @Test void a_candle_is_judged_set_by_hand() {
        allPour();

        tap(at("judge-set", 1)).ok();

        assertThat(seat(1).get("judgedSetAt").isNull()).isFalse();
        assertThat(seat(1).get("readyBasis").textValue()).isEqualTo("hand-test");
    }

    @Test void help_is_claimed_once_and_sorted() {
        tap(at("claim", 2).put("helper", "AB"), board.helper()).ok();

        assertThat(seat(2).get("helper").textValue()).isEqualTo("AB");
        tap(at("claim", 2).put("helper", "CD"), board.helper()).problem(409, "claimed").detail("AB");
        tap(at("sorted", 2).put("helper", "AB"), board.helper()).ok();
        assertThat(seat(2).get("helper").isNull()).isTrue();
    }

    private Reply tap(ObjectNode command, String token) {
        return board.tap(id, command, token);
    }

    @Test void activities_open_fill_empty_and_close() {
        allPour();
        tap(command("open-activity").put("activity", "labels")).ok();
        tap(at("join-activity", 1).put("activity", "labels")).ok();
        tap(at("quit-activity", 1).put("activity", "labels")).ok();
        tap(command("close-activity").put("activity", "labels")).ok();

        tap(at("quit-activity", 1).put("activity", "labels")).problem(409, "not-so");
        tap(command("open-activity").put("activity", "juggling")).problem(422, "no-such-activity");
    }

    @Test void notes_are_kept_about_a_seat_and_about_the_class() {
        tap(command("note").put("text", "Hall lamp is out")).ok();
        tap(at("note", 2).put("text", "Left-handed")).ok();
        tap(command("note")).problem(422, "bad-value").detail("\"text\"");

        assertThat(board.get("/api/classes/" + id + "/events", board.instructor()).body())
                .contains("Hall lamp is out", "Left-handed");
    }

    @Test void a_closed_class_takes_no_more_taps_and_opens_again_by_undo() {
        tap(opening("welcome")).ok();
        long seq = tap(command("close")).seq();

        assertThat(board.state(id).text("status")).isEqualTo("closed");
        tap(finish(1, "vessel")).problem(409, "class-closed");
        tap(command("undo").put("seq", seq)).ok();
        tap(finish(1, "vessel")).ok();
    }

    // ---- what is told apart

    @Test void a_second_tap_on_a_finished_step_is_told_as_that() {
        tap(opening("wicks")).ok();
        tap(finish(4, "wicks")).ok();

        tap(finish(4, "wicks")).problem(409, "already-finished").detail("Seat 4");
    }

    @Test void a_step_that_is_not_open_is_told_as_that() {
        tap(finish(4, "wicks")).problem(409, "out-of-order");
        tap(opening("wicks")).ok();
        tap(finish(4, "pour")).problem(409, "out-of-order").detail("has to be opened first");
    }

    @Test void a_step_that_opens_by_itself_is_not_opened() {
        tap(opening("vessel")).problem(409, "step-is-free");
    }

    @Test void led_steps_open_in_order() {
        tap(opening("mix")).problem(409, "out-of-order");
        tap(opening("wicks")).ok();
        tap(opening("wicks")).problem(409, "already-so");
    }

    @Test void seats_and_steps_that_are_not_there_are_told_as_that() {
        tap(finish(9, "vessel")).problem(422, "no-such-seat").detail("seats 1 to 8");
        tap(finish(1, "juggling")).problem(422, "no-such-step").detail("juggling");
        tap(opening("juggling")).problem(422, "no-such-step");
    }

    @Test void a_tap_may_have_been_made_earlier_but_not_in_the_future_nor_before_the_class() {
        tap(opening("wicks")).ok();
        board.testClock().advanceMinutes(10);

        tap(finish(1, "wicks").put("at", "2027-03-04T18:35:00Z")).ok();
        tap(finish(2, "wicks").put("at", "2027-03-04T18:41:00Z")).problem(422, "outside-class");
        tap(finish(2, "wicks").put("at", "2020-01-01T00:00:00Z")).problem(422, "outside-class");
        tap(finish(2, "wicks").put("at", "yesterday")).problem(422, "bad-value").detail("\"at\"");

        assertThat(seat(1).get("since").textValue()).isEqualTo("2027-03-04T18:35:00Z");
        assertThat(seat(2).get("finished")).isEmpty();
    }

    @Test void a_time_to_which_something_is_moved_is_told_from_the_time_of_the_tap() {
        tap(opening("wicks")).ok();
        long tap = tap(finish(1, "wicks")).ok().json().get("seq").longValue();
        board.testClock().advanceMinutes(10);
        ObjectNode correction = command("correct-time").put("seq", tap).put("to", "2020-01-01T00:00:00Z");

        tap(correction.deepCopy()).problem(422, "moved-outside-class").detail("2020-01-01");
        tap(correction.deepCopy().put("at", "2020-01-01T00:00:00Z")).problem(422, "outside-class");
        tap(command("move-activity").put("activity", "labels").put("to", "2020-01-01T00:00:00Z"))
                .problem(422, "moved-outside-class");
    }

    @Test void a_refused_command_leaves_nothing_behind() {
        long before = board.state(id).seq();

        tap(finish(4, "pour")).problem(409, "out-of-order");
        tap(finish(44, "vessel")).problem(422, "no-such-seat");

        assertThat(board.state(id).seq()).isEqualTo(before);
    }

    // ---- repeating

    @Test void a_command_sent_again_counts_once_and_is_answered_as_before() {
        tap(opening("welcome")).ok();
        ObjectNode tap = finish(4, "vessel");

        long first = tap(tap).seq();
        Reply second = tap(tap).ok();

        assertThat(second.seq()).isEqualTo(first);
        assertThat(second.json().get("duplicate").booleanValue()).isTrue();
        assertThat(board.state(id).seq()).isEqualTo(first);
    }

    @Test void a_command_sent_again_after_a_restart_counts_once() {
        tap(opening("welcome")).ok();
        ObjectNode tap = finish(4, "vessel");
        long first = tap(tap).seq();

        board.restart();

        assertThat(tap(tap).seq()).isEqualTo(first);
        assertThat(board.state(id).seq()).isEqualTo(first);
    }

    @Test void a_refused_command_may_succeed_later_with_the_same_id() {
        ObjectNode tap = finish(4, "wicks");
        tap(tap).problem(409, "out-of-order");
        tap(opening("wicks")).ok();

        assertThat(tap(tap).ok().json().get("duplicate").booleanValue()).isFalse();
    }

    @Test void the_same_command_racing_itself_counts_once() throws Exception {
        tap(opening("welcome")).ok();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            for (int seat = 1; seat <= 8; seat++) {
                ObjectNode tap = finish(seat, "vessel");
                List<Callable<Reply>> racing = new ArrayList<>();
                for (int i = 0; i < 4; i++) {
                    racing.add(() -> tap(tap));
                }
                List<Reply> replies = new ArrayList<>();
                for (Future<Reply> reply : threads.invokeAll(racing)) {
                    replies.add(reply.get().ok());
                }

                assertThat(replies).extracting(Reply::seq).containsOnly((long) seat + 2);
                assertThat(replies).extracting(r -> r.json().get("duplicate").booleanValue())
                        .containsExactlyInAnyOrder(false, true, true, true);
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(board.state(id).seq()).isEqualTo(10);
    }

    @Test void two_tablets_tapping_the_same_seat_at_once_finish_it_once() throws Exception {
        tap(opening("welcome")).ok();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Integer>> racing = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                racing.add(() -> tap(finish(3, "vessel")).status());
            }
            List<Integer> statuses = new ArrayList<>();
            for (Future<Integer> status : threads.invokeAll(racing)) {
                statuses.add(status.get());
            }

            assertThat(statuses).containsExactlyInAnyOrder(200, 409, 409, 409);
        } finally {
            threads.shutdownNow();
        }
    }

    @Test void a_command_id_is_one_to_64_characters() {
        tap(opening("welcome")).ok();
        tap(finish(1, "vessel").put("commandId", "")).problem(422, "bad-value").detail("\"commandId\"");
        tap(finish(1, "vessel").put("commandId", "x".repeat(65))).problem(422, "bad-value");
        tap(finish(1, "vessel").put("commandId", 7)).problem(422, "bad-value");
        tap(finish(1, "vessel").putNull("commandId")).problem(422, "bad-value");
        tap(finish(1, "vessel").put("commandId", "é".repeat(60) + freshId().substring(0, 3))).ok();
    }
}
