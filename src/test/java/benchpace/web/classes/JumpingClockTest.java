package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Reply;
import benchpace.web.pairing.Throttle;
import benchpace.web.stream.ListeningScreen;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The real board on a computer whose clock jumps, is wrong at a start, or that sleeps. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class JumpingClockTest extends PouredClass {
    private static final Duration A_BLINK = Duration.ofMillis(300);

    private Instant readyAt(int seat) {
        return Instant.parse(seat(seat, "readyAt"));
    }

    @Test void a_clock_that_jumps_two_hours_ahead_for_a_blink_moves_neither_the_board_nor_its_candles() {
        Instant poured = AFTERNOON.plusSeconds(300);
        assertThat(pouredAt(1)).isEqualTo(poured);
        Instant ready = readyAt(1);

        computer.jump(TWO_HOURS);
        assertThat(now()).isEqualTo(poured);
        computer.pass(A_BLINK);
        pour(2);
        computer.jump(TWO_HOURS.negated());

        assertThat(now()).isEqualTo(poured.plus(A_BLINK));
        assertThat(pouredAt(2)).as("tapped in the jump").isEqualTo(poured.plus(A_BLINK));
        assertThat(readyAt(1)).isEqualTo(ready);
        assertThat(Duration.between(ready, readyAt(2))).isLessThan(Duration.ofSeconds(1));
    }

    @Test void a_tap_in_the_jump_is_where_it_belongs_after_a_restart_too() {
        computer.jump(TWO_HOURS).pass(A_BLINK);
        pour(2);
        computer.jump(TWO_HOURS.negated());
        board.restart();

        assertThat(pouredAt(2)).isEqualTo(AFTERNOON.plusSeconds(300).plus(A_BLINK));
        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(300).plus(A_BLINK));
    }

    @Test void candles_cool_while_the_laptop_sleeps() {
        computer.sleep(Duration.ofMinutes(40));

        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(2_700));
        pour(2);
        assertThat(Duration.between(pouredAt(1), pouredAt(2))).isEqualTo(Duration.ofMinutes(40));
    }

    @Test void a_start_with_the_year_wrong_leaves_the_board_right_once_the_clock_is() {
        computer.jump(Duration.ofDays(365));
        board.restart();
        computer.passMinutes(1).jump(Duration.ofDays(-365));
        board.restart();

        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(360));
        assertThat(board.get("/api/classes", board.instructor()).status())
                .as("the device is still paired").isEqualTo(200);
    }

    @Test void a_class_with_records_from_the_future_goes_on_from_them_and_keeps_no_other_there() {
        computer.jump(TWO_HOURS.negated());
        board.restart();

        assertThat(now()).isEqualTo(AFTERNOON.plusSeconds(300));
        computer.passMinutes(7);
        assertThat(now()).as("by the time that passes").isEqualTo(AFTERNOON.plusSeconds(720));
        pour(2);
        assertThat(pouredAt(2)).isEqualTo(AFTERNOON.plusSeconds(720));

        String other = board.evening();
        assertThat(Instant.parse(board.state(other).text("now")))
                .isEqualTo(AFTERNOON.minus(TWO_HOURS).plusSeconds(720));
    }

    @Test void screens_count_by_the_time_of_their_class() throws IOException, InterruptedException {
        computer.jump(TWO_HOURS.negated());
        board.restart();

        try (ListeningScreen screen = ListeningScreen.at(board, "/api/classes/" + id + "/stream", "")) {
            await().untilAsserted(() -> assertThat(screen.events("state")).first().extracting(e -> e.data()).asString()
                    .contains(AFTERNOON.plusSeconds(300).toString()));
        }
    }

    @Test void a_clock_in_1999_sets_no_class_up_and_says_why() {
        computer.set(Instant.parse("1999-01-01T09:00:00Z"));
        board.restart();

        Reply refused = board.post("/api/classes", "{\"planId\":\"evening-pour\"}", board.instructor());

        assertThat(refused.status()).isEqualTo(503);
        assertThat(refused.text("detail")).isEqualTo(
                "The computer's clock says 1 January 1999. Set it right, then set up the class.");
        assertThat(board.boards().all()).extracting(b -> b.id()).containsExactly(id);
        pour(2);
        board.restart();
        assertThat(board.boards().unreadable()).isEmpty();
        assertThat(pouredAt(2)).as("a class goes on in its own time").isEqualTo(AFTERNOON.plusSeconds(300));
    }

    @Test void wrong_pins_wait_as_long_as_they_should_whatever_the_clock_does() {
        for (int i = 0; i < Throttle.FREE; i++) {
            board.post("/api/pair", "{\"pin\":\"0\"}", "");
        }
        computer.jump(Duration.ofDays(30));
        assertThat(board.post("/api/pair", "{\"pin\":\"0\"}", "").status()).isEqualTo(429);
        computer.jump(Duration.ofDays(-60)).passMinutes(1);
        assertThat(board.post("/api/pair", "{\"pin\":\"0\"}", "").status()).isEqualTo(401);
    }
}
