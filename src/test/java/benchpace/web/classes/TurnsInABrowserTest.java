package benchpace.web.classes;

import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Five seats pour at one melter tap, three minutes each: whose turn it is, on the tablet and on a helper's phone. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TurnsInABrowserTest extends LiveScreens {

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.create(Json.object().put("seats", 5).<ObjectNode>set("plan", plan()).toString());
        board.tap(id, opening("welcome")).ok();
        for (String step : new String[] {"wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.testClock().advanceMinutes(4);
            board.tap(id, opening(step)).ok();
        }
        for (int seat = 1; seat <= 5; seat++) {
            board.tap(id, finish(seat, "mix")).ok();
        }
    }

    private static JsonNode plan() {
        try {
            JsonNode plan = Json.mapper().readTree(Files.readString(Path.of("demo-data/plans/evening-pour.json")));
            for (JsonNode step : plan.get("steps")) {
                if (step.get("id").textValue().equals("pour")) {
                    ((ObjectNode) step).putObject("stations").put("atOnce", 1).put("what", "melter tap")
                            .put("minutesEach", 3);
                }
            }
            return plan;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String page(String kind) {
        return "/classes/" + id + "/" + kind;
    }

    private JsonNode seat(int number) {
        return board.state(id).json().get("seats").get(number - 1);
    }

    @Test void the_tablet_says_whose_turn_is_next_and_a_tap_brings_it_on() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at(page("instructor"));
        Device phone = here(Device.phone(board, browser)).pairedBy(board.helper()).at(page("helper"));
        assertThat(tablet.find("#now .now__turns"))
                .containsText("At the melter tap: seat 1. Next: 2, then 3, 4 and 5.");
        assertThat(tablet.find("#tile-2 .face__word")).hasText("next");
        assertThat(tablet.find("#tile-4 .face__word")).hasText("waits its turn");
        assertThat(tablet.find("#tile-4 .face__detail")).hasText("2 before it");
        assertThat(phone.find("#not-done .row").first()).containsText("1");
        assertThat(phone.find("#not-done .row").last()).containsText("waits its turn");

        board.testClock().advanceMinutes(3);
        tablet.find("#tile-1").click();

        assertThat(tablet.find("#now .now__turns")).containsText("At the melter tap: seat 2. Next: 3, then 4 and 5.");
        assertThat(phone.find("#now .now__turns")).containsText("At the melter tap: seat 2. Next: 3, then 4 and 5.");
        assertThat(tablet.find("#tile-2 .face__word")).hasCount(0);
        assertThat(tablet.find("#tile-3 .face__word")).hasText("next");
    }

    @Test void nobody_is_called_for_waiting_and_the_state_tells_the_turns() {
        for (int half = 0; half < 5; half++) {
            board.testClock().advanceMinutes(3);
            board.tap(id, finish(half + 1, "pour")).ok();
            assertThat(board.state(id).json().get("flags")).isEmpty();
            if (half == 1) {
                assertThat(seat(5).get("state").textValue()).isEqualTo("queued");
                assertThat(seat(5).get("turnsBefore").intValue()).isEqualTo(1);
                JsonNode turns = board.state(id).json().get("turns").get(0);
                assertThat(turns.get("served").toString()).isEqualTo("[3]");
                assertThat(turns.get("waiting").toString()).isEqualTo("[4,5]");
            }
        }
    }
}
