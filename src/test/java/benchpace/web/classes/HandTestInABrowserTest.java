package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Device;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** No single tap says of a candle that sets that somebody tried it: the page asks, with a network and without. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HandTestInABrowserTest extends TapScreens {

    /** Seats 1 and 2 have just poured, and the finish steps are open: their ranges begin in most of an hour. */
    private Device opened() {
        return poured("trim");
    }

    /** @param last the step that was opened last: the pour, or one after it */
    private Device poured(String last) {
        for (String step : List.of("wicks", "fragrance", "before-wax", "mix", "pour")) {
            board.tap(id, opening(step)).ok();
        }
        if (!last.equals("pour")) {
            board.tap(id, opening(last)).ok();
        }
        for (int seat = 1; seat <= 2; seat++) {
            for (String step : List.of("vessel", "wicks", "fragrance", "mix", "pour", "centre")) {
                board.tap(id, finish(seat, step)).ok();
            }
        }
        Device tablet = tablet().at(table());
        assertThat(tablet.find("#tile-1 .face")).hasClass(Pattern.compile("face--setting|face--at-leisure"));
        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) ask(tablet, "clock", "it.sure()"));
        return tablet;
    }

    private List<String> told(long before) {
        return since(before).stream().map(HandTestInABrowserTest::words).toList();
    }

    private static String words(JsonNode event) {
        return event.get("type").asText() + " " + event.path("seat").asText() + " " + event.path("step").asText();
    }

    private static void answer(Device tablet, boolean firm) {
        assertThat(tablet.find("#hand-ask")).isVisible();
        tablet.find(firm ? "#hand-ask-yes" : "#hand-ask-no").click();
        assertThat(tablet.find("#hand-ask")).isHidden();
    }

    @Test void a_tap_on_a_tile_that_still_counts_asks_and_only_a_yes_finishes_its_step() {
        Device tablet = opened();
        long before = seq();

        tablet.find("#tile-1").click();
        assertThat(tablet.find("#hand-ask")).containsText("Seat 1: tried by hand and firm?");
        answer(tablet, false);
        assertThat(tablet.find("#tile-1 .face")).hasClass(Pattern.compile("face--setting|face--at-leisure"));
        assertThat(told(before)).isEmpty();

        tablet.page().waitForTimeout(700);
        tablet.find("#tile-1").click();
        answer(tablet, true);
        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(told(before)).containsExactly("finish-step 1 trim"));
    }

    @Test void it_asks_without_a_network_too_and_the_answer_is_delivered_later() {
        Device tablet = opened();
        long before = seq();
        tablet.offline(true);

        tablet.find("#tile-2").click();
        answer(tablet, true);
        assertThat(sent(tablet.page(), 2)).hasText(Pattern.compile("done|not sent yet"));
        tablet.offline(false);

        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(told(before)).containsExactly("finish-step 2 trim"));
    }

    @Test void a_finish_step_opened_without_a_network_leaves_each_candle_its_range_and_still_asks() {
        Device tablet = poured("pour");
        String range = tablet.find("#tile-1 .face__line").textContent();
        long before = seq();
        tablet.offline(true);
        tablet.find("#next-button").click();
        tablet.find("#ask-open").click();

        Locator own = tablet.find("#tile-1 .face--unsent");
        assertThat(own.locator(".face__line")).hasText(range);
        assertThat(own.locator(".face__word")).hasText("setting");
        tablet.find("#tile-1").click();
        assertThat(tablet.find("#hand-ask")).containsText("It is said to be ready from about");
        answer(tablet, false);
        assertThat(own.locator(".face__line")).hasText(range);

        tablet.find(".place__more[data-open-seat='1']").click();
        assertThat(tablet.find("#seat-sheet .button--primary").first()).hasId("sheet-set");
        assertThat(tablet.find("#seat-sheet .sheet__state")).containsText(range);
        for (String button : List.of("#sheet-set", "#sheet-finish")) {
            tablet.find(button).click();
            answer(tablet, false);
        }
        tablet.find("#sheet-close").click();
        tablet.offline(false);
        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(told(before)).containsExactly("open-step  trim"));
    }

    @Test void in_the_sheet_the_hand_test_comes_first_and_every_way_past_the_cure_asks() {
        Device tablet = opened();
        long before = seq();
        tablet.find(".place__more[data-open-seat='1']").click();
        assertThat(tablet.find("#sheet-body .button--primary").first()).hasId("sheet-set");
        assertThat(tablet.find("#sheet-reading")).not().hasClass(Pattern.compile("button--primary"));

        tablet.find("#sheet-set").click();
        answer(tablet, false);
        tablet.find("#sheet-finish").click();
        answer(tablet, false);
        tablet.find("#sheet-step").selectOption("wrap");
        tablet.find("form:has(#sheet-step) button").click();
        answer(tablet, false);
        assertThat(told(before)).isEmpty();

        tablet.find("#sheet-set").click();
        answer(tablet, true);
        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(told(before)).containsExactly("judge-set 1 "));
    }

    @Test void the_dialogue_before_the_next_step_asks_too() {
        Device tablet = opened();
        long before = seq();
        tablet.find("#next-button").click();
        tablet.find("#ask-done-1").click();
        answer(tablet, false);
        assertThat(told(before)).isEmpty();

        tablet.page().waitForTimeout(700);
        tablet.find("#ask-done-1").click();
        answer(tablet, true);
        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(told(before)).containsExactly("finish-step 1 wrap"));
    }

    @Test void the_board_takes_what_was_tapped_early_however_late_it_comes() {
        opened();
        board.tap(id, finish(1, "trim")).ok();
        board.tap(id, command("judge-set").put("seat", 2)).ok();

        JsonNode seats = board.state(id).json().get("seats");
        assertThat(seats.get(0).get("finished").toString()).contains("trim");
        assertThat(seats.get(1).get("state").asText()).isNotEqualTo("setting");
    }
}
