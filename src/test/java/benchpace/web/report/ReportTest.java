package benchpace.web.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.OneEvening;
import benchpace.web.TestBoard;
import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A class looked back on, over HTTP. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReportTest extends OneEvening {
    private String report() {
        return board.get("/classes/" + id + "/report", board.instructor()).ok().body();
    }

    @Test void it_says_what_held_the_class_and_for_how_long() {
        SlowWick.pour(board, id, Duration.ZERO);
        String report = report();

        assertThat(report).containsPattern("is likely ready about [0-9:]+ to [0-9:]+, planned for [0-9:]+\\.");
        assertThat(report).containsSubsequence("Steps, at all seats", "12 min", "Set the wick",
                "Seats, at all steps", "12 min", "Seat 4");
        assertThat(report).containsSubsequence("The way to the last candle", "Welcome", "Seat 4 at Set the wick",
                "16 min", "4 min", "The candle of seat 1");
        assertThat(report).containsSubsequence("Each step against the plan", "Set the wick", "4 to 16 min, seat 4");
        assertThat(report).containsSubsequence("Flags", "answered", "Set the wick", "behind");
        assertThat(report).doesNotContain("Openings, after all were done");
    }

    @Test void before_the_first_pour_it_says_that_there_is_nothing_yet() {
        assertThat(report()).contains("No candle has been poured", "Nobody was flagged.");
    }

    @Test void a_closed_class_leads_to_it_and_keeps_it() {
        SlowWick.pour(board, id, Duration.ZERO);
        board.testClock().advanceMinutes(70);
        board.tap(id, TestBoard.command("note").put("text", "Wicks <short>")).ok();
        board.tap(id, TestBoard.command("close")).ok();
        board.testClock().advanceMinutes(60 * 24 * 2);

        assertThat(board.get("/classes/" + id + "/instructor", board.instructor()).body())
                .contains("/classes/" + id + "/report\"");
        assertThat(report()).contains("12 min", "Wicks &lt;short&gt;").doesNotContain("still open");
    }

    @Test void only_the_instructor_reads_who_was_slow() {
        assertThat(board.get("/classes/" + id + "/report", board.helper()).status()).isEqualTo(403);
        assertThat(board.get("/classes/" + id + "/report", "").status()).isEqualTo(401);
        assertThat(board.get("/classes/nothing/report", board.instructor()).status()).isEqualTo(404);
    }
}
