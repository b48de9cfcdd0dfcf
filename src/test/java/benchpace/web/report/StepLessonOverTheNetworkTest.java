package benchpace.web.report;

import static benchpace.web.cure.CureBoard.wish;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.cure.CureBoard;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What past classes taught about the steps, shown on the look back and taken over or not. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StepLessonOverTheNetworkTest {
    @TempDir private Path data;
    private CureBoard board;

    @BeforeEach void open() {
        board = new CureBoard(data);
    }

    @AfterEach void close() {
        board.close();
    }

    /** Everybody needs nine minutes for the glass, where the plan has three. */
    private String slowClass() {
        String id = board.create("evening-pour");
        board.minute(1);
        board.tap(id, wish("open-step").put("step", "welcome"));
        board.minute(15);
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, wish("finish-step").put("step", "vessel").put("seat", seat));
        }
        return id;
    }

    private String report(String id) {
        return board.get("/classes/" + id + "/report").body();
    }

    @Test void nothing_is_taught_while_the_class_is_open() {
        String id = slowClass();
        assertThat(report(id)).doesNotContain("What past classes teach");
        assertThat(board.post("/api/classes/" + id + "/step-lesson", Json.object(), board.instructor()).statusCode())
                .isEqualTo(404);
    }

    @Test void a_closed_class_teaches_and_the_organiser_takes_it_over_and_back() {
        String id = slowClass();
        board.tap(id, wish("close"));
        assertThat(report(id)).contains("What past classes teach", "By one closed class", "judged by the plan until")
                .containsSubsequence("Choose and wipe the glass", "3 min", "data-lesson=\"POST\"")
                .doesNotContain("data-lesson=\"DELETE\"");

        assertThat(board.post("/api/classes/" + id + "/step-lesson", Json.object(), board.instructor()).statusCode())
                .isEqualTo(200);
        assertThat(report(id)).contains("what you took over", "data-lesson=\"DELETE\"")
                .doesNotContain("data-lesson=\"POST\"");
        board.restart();
        assertThat(report(id)).contains("what you took over");

        assertThat(board.delete("/api/classes/" + id + "/step-lesson", board.instructor()).statusCode()).isEqualTo(200);
        assertThat(board.delete("/api/classes/" + id + "/step-lesson", board.instructor()).statusCode()).isEqualTo(404);
        assertThat(report(id)).contains("judged by the plan until");
    }

    @Test void helpers_and_strangers_take_nothing_over() {
        String id = slowClass();
        board.tap(id, wish("close"));
        assertThat(board.post("/api/classes/" + id + "/step-lesson", Json.object(), board.helper()).statusCode())
                .isEqualTo(403);
        assertThat(board.post("/api/classes/" + id + "/step-lesson", Json.object(), "").statusCode()).isIn(401, 403);
        assertThat(board.delete("/api/classes/" + id + "/step-lesson", board.helper()).statusCode()).isEqualTo(403);
    }
}
