package benchpace.bench.tap;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TapsTest {
    @TempDir Path data;

    @ParameterizedTest
    @ValueSource(ints = {1, 8})
    void every_tap_is_accepted_from_the_late_seats_to_long_after_the_last_step(int seats) throws Exception {
        try (TestBoard board = TestBoard.open(data)) {
            Taps taps = new Taps(seats, 3);
            String id = board.create(Json.text(Json.object().put("planId", Taps.PLAN).put("seats", seats)
                    .put("startsAt", Taps.start(board.clock.instant()).toString())));
            long seq = 0;
            for (String happened : taps.past(board.clock.instant())) {
                seq = accepted(board, id, happened);
            }
            String body = "";
            for (int n = 0; n < 40 + 18 * seats || body.contains("undo"); n++) {
                body = taps.next(seq);
                seq = accepted(board, id, body);
            }
            JsonNode all = board.state(id).json().get("seats");

            assertThat(all).hasSize(seats).allMatch(seat -> seat.get("finished").size() >= 8);
        }
    }

    private static long accepted(TestBoard board, String id, String body) throws Exception {
        Reply reply = board.tap(id, Json.read(body).deepCopy());
        assertThat(reply.status()).as(body + " " + reply.response().body()).isEqualTo(200);
        return reply.json().get("seq").longValue();
    }
}
