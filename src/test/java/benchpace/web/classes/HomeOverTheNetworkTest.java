package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Home as whoever asks over the network reads it: the same words and odds everywhere. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HomeOverTheNetworkTest {
    @TempDir private Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    @Test void the_tablet_and_the_state_say_the_promise_in_the_same_words_and_with_the_same_odds() {
        String id = board.evening();
        board.tap(id, TestBoard.opening("welcome")).ok();
        JsonNode forecast = board.state(id).json().get("forecast");
        String words = forecast.get("words").asText();

        assertThat(forecast.get("promise").asText()).isEqualTo("planned");
        assertThat(forecast.get("keptProbability").asDouble()).isBetween(0.0, 1.0);
        assertThat(words).startsWith("Home ").contains("promised; odds of keeping it");
        assertThat(board.get("/classes/" + id + "/instructor", board.instructor()).body())
                .contains(words.substring(words.indexOf("promised")));
        assertThat(forecast.has("p10") && forecast.has("p50") && forecast.has("p90")).isTrue();
    }

    @Test void the_start_page_says_the_same_to_the_instructor_and_nothing_of_it_to_a_guest() {
        String id = board.evening();
        assertThat(board.get("/", board.instructor()).body()).as("its odds are what the prep sheet says")
                .containsPattern("Home \\d\\d:\\d\\d, promised\\.").doesNotContain("odds of keeping it");
        board.tap(id, TestBoard.opening("welcome")).ok();
        String words = board.state(id).json().get("forecast").get("words").asText();

        assertThat(board.get("/", board.instructor()).body()).contains(words + ".").contains("odds of keeping it");
        assertThat(board.get("/", "").body()).doesNotContain("odds of keeping it");
    }

    @Test void late_is_in_the_state_once_it_is_likely() {
        String id = board.evening();
        board.stuckAtWicks(id, 4);
        board.testClock().advanceMinutes(25);
        JsonNode forecast = board.state(id).json().get("forecast");

        assertThat(forecast.get("promise").asText()).isEqualTo("late");
        assertThat(forecast.get("lateProbability").asDouble()).isGreaterThanOrEqualTo(0.8);
        assertThat(forecast.get("words").asText()).contains(" after the promised ");
    }
}
