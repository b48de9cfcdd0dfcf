package benchpace.web.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Reply;
import benchpace.web.TestBoard;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is sent as a plan and never seems to end is answered shortly: no helper's phone can fill the board's memory. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EndlessPlansTest {
    private static final int SHORT = 100_000;

    @TempDir Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private void isToldShortly(String plan) {
        Reply reply = board.post("/api/plans/check", plan, board.helper()).ok();
        assertThat(reply.json().get("problems")).isNotEmpty();
        assertThat(reply.body().length()).isLessThan(SHORT);
        Reply refused = board.post("/api/plans", plan, board.instructor()).problem(422, "bad-value");
        assertThat(refused.body().length()).isLessThan(SHORT);
    }

    private static String endless(String list) {
        return "\"" + list + "\":[" + "{},".repeat(160_000) + "{}]";
    }

    @Test void lists_without_end_are() {
        for (String list : List.of("steps", "candles", "activities")) {
            isToldShortly("{\"id\":\"x\",\"name\":\"X\"," + endless(list) + "}");
        }
        for (String list : List.of("supplies", "melters", "circuits", "appliances")) {
            isToldShortly("{\"id\":\"x\",\"name\":\"X\",\"prep\":{" + endless(list) + "}}");
        }
    }

    @Test void fields_without_end_are() {
        isToldShortly(IntStream.range(0, 40_000).mapToObj(n -> "\"f" + n + "\":1")
                .collect(Collectors.joining(",", "{", "}")));
    }
}
