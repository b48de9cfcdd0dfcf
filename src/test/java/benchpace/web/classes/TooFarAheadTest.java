package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.EveryPage;
import benchpace.web.TestBoard;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The wrapping told for long after everything else: three ordinary taps that once took every page with them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TooFarAheadTest {
    private static final String[] STEPS = {"wicks", "fragrance", "before-wax", "mix", "pour"};

    @TempDir Path data;

    @Test void a_wrapping_moved_beyond_the_planned_end_and_opened_leaves_every_page_as_it_is() {
        try (TestBoard board = TestBoard.open(data)) {
            String id = board.evening();
            for (String step : STEPS) {
                board.tap(id, TestBoard.opening(step)).ok();
            }
            for (int seat = 1; seat <= 8; seat++) {
                board.tap(id, TestBoard.finish(seat, "centre")).ok();
            }
            board.testClock().advanceMinutes(5);
            for (int seat = 1; seat <= 8; seat++) {
                board.tap(id, TestBoard.command("judge-set").put("seat", seat)).ok();
            }
            board.testClock().advanceMinutes(1);
            board.tap(id, TestBoard.opening("trim")).ok();
            for (int seat = 1; seat <= 6; seat++) { // so that the wrapping of the others ends soon
                board.testClock().advance(Duration.ofSeconds(20));
                board.tap(id, TestBoard.finish(seat, "trim")).ok();
                board.tap(id, TestBoard.finish(seat, "wrap")).ok();
            }
            String hour = board.clock.instant().plus(Duration.ofHours(1)).toString();
            board.tap(id, TestBoard.command("move-activity").put("activity", "wrapping").put("to", hour)).ok();
            EveryPage.render(board, id, 1);
            long opened = board.tap(id, TestBoard.command("open-activity").put("activity", "wrapping")).seq();
            whole(board, id);
            board.testClock().advanceMinutes(1);
            whole(board, id);

            board.tap(id, TestBoard.command("undo").put("seq", opened)).ok();
            whole(board, id);
            board.restart();
            whole(board, id);
        }
    }

    /** Every page is there, and nothing is missing from them. */
    private static void whole(TestBoard board, String id) {
        EveryPage.render(board, id, 1);
        assertThat(board.state(id).text("missing")).isEmpty();
        assertThat(board.get("/health", "").json().get("degraded")).isEmpty();
    }
}
