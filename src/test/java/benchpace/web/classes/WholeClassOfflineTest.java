package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.time.InstantSource;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The network goes away after the welcome, and the tablet carries the class on by itself until it is back. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WholeClassOfflineTest extends TapScreens {
    private static final int SEATS = 3;

    @Override protected void begin() {
        board = new TestBoard(data, InstantSource.system(), StreamLimits.USUAL);
        id = board.create("{\"planId\":\"evening-pour\",\"seats\":" + SEATS + ",\"names\":[\"Ida\"]}");
        board.tap(id, TestBoard.opening("welcome")).ok();
    }

    private static Locator own(Page page, int seat) {
        return page.locator("#tile-" + seat + " .face--unsent");
    }

    private static void heading(Page page, String words) {
        assertThat(page.locator("#now-unsent h2")).hasText(words);
    }

    /** Opens the next led step, whoever is left behind. */
    private static void open(Page page, String heading) {
        page.locator("#next-unsent button, #next:not([hidden]) #next-button").first().click();
        if (page.locator("#next-dialog-unsent[open]").count() > 0) {
            page.locator("#ask-open-unsent").click();
        } else if (page.locator("#next-dialog[open]").count() > 0) {
            page.locator("#ask-open").click();
        }
        heading(page, heading);
    }

    /** Taps every tile until each shows what comes after. */
    private static void everybody(Page page, String step) {
        for (int seat = 1; seat <= SEATS; seat++) {
            Locator face = page.locator("#tile-" + seat + " .face[data-step='" + step
                    + "'][data-can-finish='true']:visible");
            assertThat(face).hasCount(1);
            page.locator("#tile-" + seat).click();
            assertThat(face).hasCount(0);
        }
        page.waitForTimeout(700); // the next taps are others, not trembling fingers
    }

    private static void inSheet(Page page, int seat, String button) {
        page.locator("[data-place='" + seat + "'] .place__more").click();
        page.locator("#seat-sheet " + button).click();
        page.locator("#sheet-close").click();
    }

    @Test void a_tablet_without_a_network_carries_on_through_a_whole_class_and_the_board_agrees_afterwards() {
        Device tablet = live(tablet(), table());
        Page page = tablet.page();
        long before = seq();
        tablet.offline(true);

        open(page, heading("wicks"));
        everybody(page, "vessel");
        everybody(page, "wicks");
        open(page, heading("fragrance"));
        everybody(page, "fragrance");
        inSheet(page, 2, "#sheet-pause");
        assertThat(own(page, 2)).hasClass(Pattern.compile("face--paused"));
        inSheet(page, 2, "#sheet-resume");
        inSheet(page, 3, "#sheet-claim");
        open(page, heading("before-wax"));
        open(page, heading("mix"));
        everybody(page, "mix");
        open(page, heading("pour"));
        everybody(page, "pour");
        everybody(page, "centre");
        assertThat(own(page, 1)).containsText("range when the board is back");
        for (int seat = 1; seat <= SEATS; seat++) {
            page.locator("[data-place='" + seat + "'] .place__more").click();
            page.locator("#sheet-set").click();
            assertThat(page.locator("#hand-ask")).containsText("Its range is told when the board is back.");
            page.locator("#hand-ask-yes").click();
            page.locator("#sheet-close").click();
            assertThat(own(page, seat)).hasClass(Pattern.compile("face--set"));
        }
        open(page, heading("trim"));
        everybody(page, "trim");
        page.locator("#next-unsent button").click();
        page.locator("#ask-open-unsent").click();
        assertThat(page.locator("#next-unsent .next-idle")).containsText("Close the class");
        assertThat(page.locator("#next-unsent .next")).hasCount(0);
        String under = page.locator("#now-unsent h2").textContent();
        List<String> shown = own(page, 1).page().locator("#tile-1, #tile-2, #tile-3").all().stream()
                .map(tile -> tile.locator(".face--unsent").getAttribute("data-step")).toList();
        assertThat(page.locator("#status-words")).containsText("not sent yet");
        assertThat(since(before)).isEmpty();

        tablet.offline(false);

        assertThat(page.locator(".face--unsent")).hasCount(0);
        assertThat(page.locator("#now-unsent")).isHidden();
        assertThat(page.locator("#now h2")).containsText(under);
        assertThat(states("step")).isEqualTo(shown);
        assertThat(states("finished")).allMatch(done -> done.equals(
                "[\"vessel\",\"wicks\",\"fragrance\",\"mix\",\"pour\",\"centre\",\"trim\"]"));
        assertThat(since(before, "type").stream().filter("finish-step"::equals)).hasSize(7 * SEATS);
        assertThat(since(before, "type").stream().filter("open-step"::equals)).hasSize(7);
        assertThat(since(before, "type")).contains("pause", "resume", "claim", "judge-set");
    }

    private List<String> states(String field) {
        JsonNode seats = board.state(id).json().get("seats");
        return StreamSupport.stream(seats.spliterator(), false).map(s -> s.get(field).isTextual()
                ? s.get(field).textValue() : s.get(field).toString()).toList();
    }

    /** What a step is called. */
    private String heading(String step) {
        return StreamSupport.stream(board.state(id).json().get("steps").spliterator(), false)
                .filter(s -> s.get("id").textValue().equals(step)).findFirst().orElseThrow().get("name").textValue();
    }
}
