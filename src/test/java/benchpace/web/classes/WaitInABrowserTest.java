package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.AccessibilityTest;
import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page of the wait, leaving early and the pickup shelf, as tablets, a phone and the wall show them. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitInABrowserTest {
    /** Counts the notes that would have been heard. */
    private static final String EARS = """
            window.notes = 0;
            const start = OscillatorNode.prototype.start;
            OscillatorNode.prototype.start = function (...when) { window.notes += 1; return start.apply(this, when); };
            """;

    @TempDir Path data;
    private TestBoard board;
    private String id;
    private Browser browser;
    private final List<Device> devices = new ArrayList<>();

    @BeforeEach void open(Browser browser) {
        this.browser = browser;
        board = TestBoard.open(data);
        id = board.evening();
        for (String step : new String[] {"welcome", "wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.tap(id, TestBoard.opening(step));
        }
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, TestBoard.finish(seat, "pour")).ok();
            board.testClock().advance(Duration.ofSeconds(15));
        }
        board.testClock().advanceMinutes(4);
    }

    @AfterEach void close() {
        devices.forEach(Device::close);
        board.close();
    }

    private Device here(Device device) {
        devices.add(device);
        return device;
    }

    private Device tablet(String path) {
        return here(Device.tablet(board, browser)).withScript(EARS).pairedBy(board.instructor()).at(path);
    }

    private Device waitPage() {
        return tablet("/classes/" + id + "/wait");
    }

    private JsonNode activity(String name) {
        for (JsonNode a : board.state(id).json().at("/wait/activities")) {
            if (a.get("id").textValue().equals(name)) {
                return a;
            }
        }
        throw new AssertionError(name);
    }

    private static void assertAccessible(Device device, String situation) {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            device.page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
            device.page().waitForFunction("() => !document.getAnimations().some(a => a instanceof CSSTransition)");
            assertThat(AccessibilityTest.axe(device.page(), scheme).analyze().getViolations())
                    .as(situation + ", " + scheme).isEmpty();
        }
    }

    @Test void a_break_moves_by_one_tap_and_every_screen_learns_of_it() {
        Device page = waitPage();
        Device wall = here(Device.wall(board, browser)).at("/classes/" + id + "/wall");
        String before = activity("drinks").at("/next/at").textValue();
        assertThat(wall.find("#wall-wait .call").first()).isVisible();

        page.find("#later-drinks").click();

        assertThat(page.find("#activity-drinks")).not().containsText("never");
        page.page().waitForCondition(() -> !activity("drinks").at("/next/at").textValue().equals(before));
        page.find("#skip-labels, #end-labels").click();
        assertThat(page.find("#activity-labels")).containsText("Not tonight.");
        assertThat(wall.find("#wall-wait")).not().containsText("Label table");
        page.find("#undo-button").click();
        assertThat(page.find("#activity-labels")).not().containsText("Not tonight.");
        devices.forEach(Device::assertNoComplaint);
    }

    @Test void on_a_phone_the_strips_show_the_present_and_stay_where_a_thumb_put_them() {
        board.testClock().advanceMinutes(45);
        Device phone = here(Device.phone(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/wait");
        String inSight = "() => { const box = document.querySelector('.strips').getBoundingClientRect();"
                + "const now = document.querySelector('.strips__now').getBoundingClientRect();"
                + "return now.left > box.left && now.right < box.right; }";
        phone.page().waitForFunction(inSight);

        phone.page().evaluate("document.querySelector('.strips').scrollLeft = 40");
        phone.page().waitForFunction("() => document.querySelector('.strips').scrollLeft === 40");
        phone.page().evaluate("document.querySelector('.strips').dataset.old = 'yes'");
        board.tap(id, TestBoard.command("judge-set").put("seat", 1)).ok();
        phone.page().waitForFunction("() => !document.querySelector('.strips').dataset.old");
        phone.page().waitForFunction("() => document.querySelector('.strips').scrollLeft === 40");
    }

    @Test void what_is_said_of_the_cure_begins_with_a_capital_on_the_table_and_on_a_phone() {
        for (Device device : List.of(here(Device.tablet(board, browser)).pairedBy(board.instructor())
                        .at("/classes/" + id + "/instructor"),
                here(Device.phone(board, browser)).pairedBy(board.helper()).at("/classes/" + id + "/helper"))) {
            assertThat(device.find(".now__cure b")).hasText(Pattern.compile("Can be tried in \\d+ min"),
                    new LocatorAssertions.HasTextOptions().setUseInnerText(true));
        }
    }

    @Test void an_activity_is_started_lengthened_and_ended_from_the_keyboard() {
        Device page = waitPage();
        page.find("#start-drinks").focus();
        page.page().keyboard().press("Enter");
        assertThat(page.find("#activity-drinks")).containsText("Open since");
        page.find("#longer-drinks").focus();
        page.page().keyboard().press("Enter");
        assertThat(page.find("#activity-drinks")).containsText("5 min longer than planned");
        board.testClock().advanceMinutes(1);
        page.find("#end-drinks").focus();
        page.page().keyboard().press("Enter");
        page.page().waitForCondition(() -> !activity("drinks").get("open").booleanValue());
    }

    @Test void the_cue_is_off_until_asked_for_and_sounds_once_an_event() {
        Device page = waitPage();
        assertThat(page.find("#sound")).hasAttribute("aria-pressed", "false");
        page.find("#sound").click();
        assertThat(page.find("#sound-words")).hasText("Sound is on");
        page.page().waitForFunction("() => window.notes === 2");

        page.find("#start-drinks").click();
        page.page().waitForFunction("() => window.notes === 4");
        board.testClock().advance(Duration.ofSeconds(70));
        board.tap(id, TestBoard.command("note").put("text", "the kettle is on")).ok();
        assertThat(page.find("#activity-drinks")).containsText("Open since");
        assertThat(page.page().evaluate("window.notes")).isEqualTo(4);
    }

    @Test void a_seat_leaves_early_and_its_candle_is_collected_by_its_word() {
        Device tablet = tablet("/classes/" + id + "/instructor");
        tablet.find(".place__more[data-open-seat='3']").click();
        tablet.find("#sheet-leave").click();
        assertThat(tablet.find("#leave-place")).isVisible();
        tablet.find("#leave-name").fill("Io");
        String word = tablet.find("#leave-claim").inputValue();
        assertAccessible(tablet, "leaving");
        tablet.find("#leave-form button[type=submit]").click();
        assertThat(tablet.find("#leave-done-word")).hasText(word);
        tablet.find("#leave-done [data-dismiss]").click();
        assertThat(tablet.find("#tile-3")).containsText("left");

        Device counter = here(Device.phone(board, browser)).pairedBy(board.helper()).at("/shelf");
        assertThat(counter.find("#setting-title")).containsText("Setting");
        assertAccessible(counter, "the shelf on a phone");
        counter.find("#find").fill(word);
        counter.find("#hand-over").click();
        assertThat(counter.find("#tested-dialog")).isVisible();
        counter.find("#tested-yes").click();
        assertThat(counter.find("#collected-title")).isVisible();
        counter.find("[data-shelf-action=undo]").click();
        assertThat(counter.find("#setting-title")).isVisible();
        assertThat(board.get("/api/shelf", board.helper()).ok().json().at("/entries/0/status").textValue())
                .isEqualTo("setting");
    }

    @Test void two_tablets_want_one_place_and_the_second_is_told_and_offered_another() {
        Device first = leaving(3);
        Device second = leaving(4);
        first.find("#leave-form button[type=submit]").click();
        assertThat(first.find("#leave-done-place")).hasText("Upper 1");

        second.find("#leave-form button[type=submit]").click();

        assertThat(second.find("#leave-answer")).containsText("Another candle stands at Upper 1 already");
        second.find("#leave-form button[type=submit]").click();
        assertThat(second.find("#leave-done-place")).hasText("Upper 2");
    }

    private Device leaving(int seat) {
        Device tablet = tablet("/classes/" + id + "/instructor");
        tablet.find(".place__more[data-open-seat='" + seat + "']").click();
        tablet.find("#sheet-leave").click();
        assertThat(tablet.find("#leave-place")).hasValue("1");
        return tablet;
    }

    @Test void undoing_the_leaving_brings_the_candle_back() {
        Device tablet = leaving(3);
        tablet.find("#leave-form button[type=submit]").click();
        assertThat(tablet.find("#leave-done-place")).hasText("Upper 1");
        tablet.find("#leave-done [data-dismiss]").click();
        assertThat(tablet.find("#undo-button")).containsText(Pattern.compile("left|home"));
        tablet.find("#undo-button").click();

        assertThat(tablet.find("#tile-3")).not().containsText("left,");
        tablet.page().waitForCondition(() ->
                board.get("/api/shelf", board.helper()).ok().json().get("entries").isEmpty());
    }

    @Test void the_pages_of_wait_shelf_and_tags_pass_the_accessibility_rules() {
        Device page = waitPage();
        assertThat(page.find(".strips__svg")).isVisible();
        assertAccessible(page, "the wait");
        page.at("/shelf");
        assertAccessible(page, "an empty shelf");
        page.find("[data-open=settings-dialog]").click();
        assertAccessible(page, "the shelf's settings");
        board.post("/api/classes/" + id + "/seats/5/leave", "{\"commandId\":\"t1\",\"shelf\":\"Upper\",\"place\":2}",
                board.instructor()).ok();
        page.at("/shelf/tags?ids=1");
        assertThat(page.find(".tag__claim")).isVisible();
        assertAccessible(page, "tags");
        devices.forEach(Device::assertNoComplaint);
    }

    @Test void the_shelf_is_arranged_anew_in_its_settings() {
        Device page = tablet("/shelf");
        page.find("[data-open=settings-dialog]").click();
        page.find("#settings-shelves").fill("Window");
        page.find("#settings-form button[type=submit]").click();
        assertThat(page.find("#settings-answer")).containsText("needs a name and a number");
        page.find("#settings-shelves").fill("Window 4\nBack room 10");
        page.find("#settings-form button[type=submit]").click();
        assertThat(page.find("#settings-dialog")).isHidden();

        assertThat(board.get("/api/shelf/settings", board.helper()).ok().json().at("/shelves/1/name").textValue())
                .isEqualTo("Back room");
    }
}
