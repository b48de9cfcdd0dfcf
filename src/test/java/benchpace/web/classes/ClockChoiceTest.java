package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.time.SettableClocks;
import benchpace.files.Json;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.stream.ListeningScreen;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The instructor says which clock is right, and everything goes on by that. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClockChoiceTest extends PouredClass {
    private JsonNode clock() {
        return board.get("/api/clock", board.instructor()).ok().json();
    }

    private Reply choose(String choice) {
        return board.post("/api/clock", Json.text(Json.object().put("choice", choice)), board.instructor());
    }

    private Reply chooseForTheClass(String choice) {
        return board.post("/api/clock", Json.text(Json.object().put("choice", choice).put("class", id)),
                board.instructor());
    }

    /** Somebody sets the computer's clock, and it stays so for a minute. */
    private void setClock(Duration by) {
        computer.jump(by);
        now();
        computer.passMinutes(1);
    }

    private String told() {
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/instructor/stream",
                board.instructor())) {
            await().until(() -> !screen.events("clocks").isEmpty());
            return screen.events("clocks").get(0).data();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Test void a_difference_that_stays_is_told_on_the_instructors_page_and_nowhere_else() {
        assertThat(told()).isBlank();
        setClock(TWO_HOURS);

        assertThat(told()).contains("Since 17:05 the computer's clock is 2 h ahead of the board's time. "
                + "Which is right?").contains("The board is right", "The computer is right")
                .doesNotContain("asleep");
        assertThat(board.get("/", board.instructor()).body()).contains("Which is right?");
        assertThat(board.get("/", board.helper()).body()).doesNotContain("Which is right?");
        for (String page : new String[] {"wall", "helper"}) {
            assertThat(board.get("/classes/" + id + "/" + page, board.helper()).ok().body())
                    .doesNotContain("Which is right?");
        }
        assertThat(clock().get("disagreement").get("choices")).hasToString("[\"board\",\"computer\"]");
    }

    @Test void the_board_is_right_and_nobody_is_asked_again() {
        setClock(TWO_HOURS);
        choose("board").ok();
        computer.passMinutes(10);

        assertThat(clock().get("disagreement").isNull()).isTrue();
        assertThat(told()).isBlank();
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(300 + 660));
        assertThat(board.state(id).seq()).as("nothing was written").isEqualTo(6);
    }

    @Test void the_computer_is_right_and_all_that_was_written_moves_along() {
        setClock(TWO_HOURS);
        choose("computer").ok();

        assertThat(now()).isEqualTo(AFTERNOON.plus(TWO_HOURS).plusSeconds(360));
        assertThat(pouredAt(1)).as("a minute ago, as before").isEqualTo(AFTERNOON.plus(TWO_HOURS).plusSeconds(300));
        assertThat(clock().get("disagreement").isNull()).isTrue();
        pour(2);
        String before = seats();
        board.restart();
        assertThat(seats()).isEqualTo(before);
        assertThat(pouredAt(2)).isEqualTo(AFTERNOON.plus(TWO_HOURS).plusSeconds(360));
        assertThat(told()).isBlank();
    }

    private String seats() {
        return board.state(id).json().get("seats").toString();
    }

    @Test void a_clock_set_back_moves_the_class_back_too_and_a_wrong_choice_is_taken_back_by_the_opposite_one() {
        setClock(TWO_HOURS.negated());
        choose("computer").ok();
        assertThat(now()).isEqualTo(AFTERNOON.minus(TWO_HOURS).plusSeconds(360));
        assertThat(pouredAt(1)).isEqualTo(AFTERNOON.minus(TWO_HOURS).plusSeconds(300));

        setClock(TWO_HOURS);
        choose("computer").ok();
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(420));
        assertThat(pouredAt(1)).isEqualTo(AFTERNOON.plusSeconds(300));
        assertThat(board.get("/classes/" + id + "/report", board.instructor()).status()).isEqualTo(200);
        assertThat(board.get("/classes/" + id + "/wait", board.instructor()).status()).isEqualTo(200);
    }

    @Test void a_year_that_was_wrong_since_the_start_is_right_after_one_tap() {
        Duration years = Duration.ofDays(365 * 60);
        board.close();
        computer = new SettableClocks(AFTERNOON.plus(years), true);
        board = new TestBoard(data.resolve("other"), log -> computer.start(log::fits), StreamLimits.USUAL);
        id = board.evening();
        computer.passMinutes(5);
        board.tap(id, TestBoard.opening("wicks")).ok();
        setClock(years.negated());
        choose("computer").ok();

        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(360));
        assertThat(Instant.parse(board.state(id).text("startsAt"))).isEqualTo(AFTERNOON);
        board.restart();
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(360));
        assertThat(told()).isBlank();
    }

    @Test void after_a_start_by_a_clock_set_ahead_only_what_was_written_since_moves_back() {
        computer.jump(TWO_HOURS);
        board.restart();
        computer.passMinutes(1);
        pour(2);
        setClock(TWO_HOURS.negated());
        choose("computer").ok();

        assertThat(pouredAt(1)).isEqualTo(AFTERNOON.plusSeconds(300));
        assertThat(pouredAt(2)).isEqualTo(AFTERNOON.plusSeconds(360));
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(420));
    }

    @Test void another_class_that_wrote_nothing_meanwhile_stays_as_it_was() {
        String other = board.evening();
        board.restart();
        board.tap(id, TestBoard.command("note").put("text", "Hello.")).ok();
        setClock(TWO_HOURS);
        choose("computer").ok();

        assertThat(board.state(other).seq()).isEqualTo(1);
        assertThat(board.boards().find(other).orElseThrow().live().createdAt()).isEqualTo(AFTERNOON.plusSeconds(300));
    }

    @Test void where_sleeps_are_not_told_the_instructor_says_that_it_was_one() {
        board.close();
        data = data.resolve("other");
        open(false);
        computer.sleep(Duration.ofMinutes(40));
        now();
        computer.passMinutes(1);

        assertThat(told()).contains("Was it set, or was the computer asleep?", "The computer was asleep");
        choose("slept").ok();
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(300 + 2_460));
        assertThat(pouredAt(1)).as("the candle has cooled meanwhile").isEqualTo(AFTERNOON.plusSeconds(300));
    }

    @Test void records_from_the_future_are_told_with_the_same_choice() {
        computer.jump(TWO_HOURS.negated());
        board.restart();

        assertThat(told()).contains("This class has times up to 17:05, later than the computer's clock. It goes on "
                + "by its own time, 2 h ahead.");
        assertThat(board.get("/", board.instructor()).body()).contains(
                "<p class=\"class__clocks\">Its times reach to 17:05, later than now");
        assertThat(clock().get("classesAhead").get(0).get("id").textValue()).isEqualTo(id);
        chooseForTheClass("board").ok();
        assertThat(told()).isBlank();
        computer.passMinutes(3);
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(480));

        chooseForTheClass("computer").ok();
        assertThat(now()).isEqualTo(AFTERNOON.minus(TWO_HOURS).plusSeconds(480));
        assertThat(pouredAt(1)).isEqualTo(AFTERNOON.minus(TWO_HOURS).plusSeconds(300));
        board.restart();
        assertThat(told()).isBlank();
    }

    @Test void a_start_by_a_clock_that_cannot_be_is_told_where_classes_are_chosen_and_asks_for_no_choice() {
        computer.set(Instant.parse("1999-03-04T16:00:00Z"));
        board.restart();

        assertThat(board.get("/", board.instructor()).body().replace("&#39;", "'"))
                .contains("says 4 March 1999, 17:00, which cannot be. Set the computer's clock right.",
                        "Its times reach to 4 March 2027, 17:05, later than now.")
                .doesNotContain("data-clock-choice", "asks which clock");
    }

    @Test void a_tap_in_a_jump_that_an_older_board_followed_comes_back_alone() {
        computer.jump(TWO_HOURS);
        board.restart();
        computer.pass(Duration.ofMillis(300));
        pour(2);
        computer.jump(TWO_HOURS.negated()).passMinutes(5);
        board.restart();
        chooseForTheClass("computer").ok();

        assertThat(pouredAt(1)).isEqualTo(AFTERNOON.plusSeconds(300));
        assertThat(pouredAt(2)).isBetween(AFTERNOON.plusSeconds(300), now());
    }

    @Test void an_impossible_clock_is_followed_by_nobody_until_it_is_possible_and_then_by_itself() {
        computer.set(Instant.parse("1999-01-01T09:00:00Z"));
        now();
        computer.passMinutes(1);
        assertThat(told()).contains("which cannot be").doesNotContain("The computer is right");
        choose("computer").problem(409, "impossible-clock");

        board.restart();
        assertThat(told()).contains("The computer's clock says 1 January 1999, 10:01, which cannot be.");
        computer.passMinutes(4);
        pour(2);
        computer.set(AFTERNOON.plusSeconds(1_200));
        String other = board.evening();
        assertThat(board.boards().find(other).orElseThrow().live().createdAt())
                .isEqualTo(AFTERNOON.plusSeconds(1_200));
        assertThat(pouredAt(2)).as("at the same moment").isEqualTo(AFTERNOON.plusSeconds(1_200));
        assertThat(pouredAt(1)).isEqualTo(AFTERNOON.plusSeconds(300));
    }

    @Test void a_tap_that_waited_in_a_tablet_says_when_it_was_made_by_the_clock_of_then() {
        String tapped = now().toString();
        setClock(TWO_HOURS.negated());
        choose("computer").ok();
        board.tap(id, TestBoard.finish(2, "pour").put("at", tapped).put("clocks", 0)).ok();

        assertThat(pouredAt(2)).isEqualTo(AFTERNOON.minus(TWO_HOURS).plusSeconds(300));
    }

    @Test void screens_hear_the_new_time_at_once() throws IOException, InterruptedException {
        setClock(TWO_HOURS);
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/wall/stream", "")) {
            await().until(() -> !screen.events("state").isEmpty());
            choose("computer").ok();
            await().untilAsserted(() -> assertThat(screen.events("state")).last().extracting(e -> e.data()).asString()
                    .contains("\"now\":\"" + AFTERNOON.plus(TWO_HOURS).plusSeconds(360), "\"clocks\":1"));
        }
    }

    @Test void the_device_that_says_so_stays_paired_however_far_the_clock_was_off() {
        board.instructor();
        setClock(Duration.ofDays(300));
        choose("computer").ok();
        assertThat(clock().get("disagreement").isNull()).isTrue();
        setClock(Duration.ofDays(-300));
        choose("computer").ok();
        board.restart();
        assertThat(board.get("/api/clock", board.instructor()).status()).isEqualTo(200);
    }

    @Test void only_the_instructor_says_which_clock_is_right() {
        setClock(TWO_HOURS);
        board.get("/api/clock", "").problem(401, "not-paired");
        board.get("/api/clock", board.helper()).problem(403, "no-right");
        board.post("/api/clock", "{\"choice\":\"board\"}", board.helper()).problem(403, "no-right");
        choose("both").problem(422, "bad-value");
        choose("slept").problem(409, "nothing-to-decide");
        choose("board").ok();
        choose("board").problem(409, "nothing-to-decide");
        assertThat(chooseForTheClass("computer").status()).isEqualTo(409);
    }

    @Test void the_log_says_what_was_written_and_what_was_set_right() {
        setClock(TWO_HOURS.negated());
        choose("computer").ok();

        String[] lines = board.get("/api/classes/" + id + "/events", board.instructor()).ok().body().split("\n");
        assertThat(lines[5]).contains("\"recordedAt\":\"" + AFTERNOON.plusSeconds(300) + "\"");
        assertThat(lines[6]).contains("\"type\":\"shift-clock\"", "\"from\":1", "\"milliseconds\":-7200000");
        board.tap(id, TestBoard.command("shift-clock").put("from", 1).put("milliseconds", 5))
                .problem(422, "bad-value");
    }
}
