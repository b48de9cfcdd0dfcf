package benchpace.web.playback;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.AccessibilityTest;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The recorded evening watched on a table, a phone and a wall at once. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlaybackInABrowserTest extends LiveScreens {
    private static final Pattern OVER = Pattern.compile("over", Pattern.CASE_INSENSITIVE);

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.post("/api/playbacks", "{\"demo\":true}", board.instructor()).text("id");
        set("{\"paused\":true}");
    }

    private void set(String body) {
        board.put("/api/playbacks/" + id, body, board.instructor()).ok();
    }

    private Device table() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/instructor");
    }

    private Device phone() {
        return here(Device.phone(board, browser)).pairedBy(board.helper()).at("/classes/" + id + "/helper");
    }

    private Device wall() {
        return here(Device.wall(board, browser)).at("/classes/" + id + "/wall");
    }

    private static int seconds(Device device) {
        return Integer.parseInt(device.find("#playback-at").inputValue());
    }

    @Test void a_whole_evening_is_watched_at_60_times_on_the_table_and_the_wall() {
        Device table = table();
        Device wall = wall();
        table.find("#playback-speed").selectOption("60");
        table.find("#playback-play").click();
        assertThat(table.find("#playback")).hasClass(Pattern.compile("playback--plays"));

        assertThat(table.find("#playback-said")).hasText("The evening is over.",
                new com.microsoft.playwright.assertions.LocatorAssertions.HasTextOptions().setTimeout(400_000));

        assertThat(table.find("#now")).containsText(OVER);
        assertThat(wall.find("#wall-main")).containsText(Pattern.compile("Thank|over", Pattern.CASE_INSENSITIVE));
        assertThat(table.find("#playback-play")).hasAttribute("aria-label", "Play");
        assertThat(table.find(".bar__clock").innerText()).isEqualTo(wall.find(".wall__clock").innerText());
    }

    @Test void it_is_paused_and_moved_back_and_forth_and_every_screen_goes_along() {
        Device table = table();
        Device wall = wall();
        Page page = table.page();
        assertThat(wall.find(".wall__clock")).not().isEmpty();
        String early = wall.find(".wall__clock").innerText();
        page.keyboard().press("End");
        assertThat(table.find("#playback-said")).hasText("The evening is over.");
        assertThat(wall.find(".wall__clock")).not().hasText(early);

        page.keyboard().press("Home");
        assertThat(table.find("#playback-said")).not().hasText("The evening is over.");
        assertThat(wall.find(".wall__clock")).hasText(early);
        assertThat(seconds(table)).isZero();

        page.keyboard().press("n");
        page.waitForFunction("() => Number(document.getElementById('playback-at').value) > 0");
        int first = seconds(table);
        page.keyboard().press("n");
        page.waitForFunction("first => Number(document.getElementById('playback-at').value) > first", first);
        page.keyboard().press("b");
        page.waitForFunction("first => Number(document.getElementById('playback-at').value) <= first", first);
        assertThat(table.find("#playback-said")).not().isEmpty();
        page.waitForTimeout(1_000); // until the clock shows it, too
        String stands = table.find(".bar__clock").innerText();
        page.waitForTimeout(1_500);
        assertThat(table.find(".bar__clock")).hasText(stands);
    }

    @Test void a_tap_says_that_it_is_played_back_and_nothing_is_kept_of_it() {
        set("{\"at\":\"" + board.get("/api/playbacks/" + id, board.instructor()).json().get("marks").get(3).get("at")
                .textValue() + "\"}");
        Device table = table();
        assertThat(table.find("#playback")).isVisible();

        table.find(".tile").first().click();
        assertThat(table.find("#messages, #seat-sheet[open]").first()).isVisible();
        table.page().keyboard().press("Escape");
        table.find("[data-open=note-dialog]").click(new Locator.ClickOptions().setForce(true));

        assertThat(table.find("#messages")).containsText("This is an evening played back");
        assertThat(table.find("#note-dialog")).isHidden();
        assertThat(table.page().evaluate("() => Object.keys(localStorage).filter(k => k.includes('played.')).length"))
                .isEqualTo(0);
    }

    @Test void it_is_plainly_marked_on_every_screen_in_light_and_dark_and_sound_for_axe() {
        for (Device device : List.of(table(), phone(), wall(),
                here(Device.phone(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/instructor"),
                here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/wait"))) {
            assertThat(device.find(".playback__mark")).containsText("Played back");
            assertThat(device.find(".playback__mark b")).isInViewport();
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                AccessibilityTest.show(device.page(), scheme);
                assertThat(AccessibilityTest.axe(device.page(), scheme).analyze().getViolations().stream()
                        .map(rule -> rule.getId() + " " + rule.getNodes().get(0).getTarget()).toList())
                        .as(device.page().url() + " " + scheme).isEmpty();
            }
            assertThat((Boolean) device.page().evaluate("() => document.documentElement.scrollWidth <= innerWidth"))
                    .as("nothing to the side of " + device.page().url()).isTrue();
        }
    }

    @Test void no_step_is_cut_by_the_band_on_the_table_and_on_the_wall() {
        Device table = table();
        Device wall = wall();
        int steps = 0;
        for (JsonNode mark : board.get("/api/playbacks/" + id, board.instructor()).json().get("marks")) {
            if (mark.get("words").asText().startsWith("Opened ")) {
                set("{\"at\":\"" + mark.get("at").asText() + "\"}");
                assertThat(table.find(".now__heading")).containsText(mark.get("words").asText().substring(7));
                assertThat(wall.find(".wall__clock")).hasText(DateTimeFormatter.ofPattern("HH:mm")
                        .format(Instant.parse(mark.get("at").asText()).atZone(TestBoard.ZONE)));
                wall.page().waitForFunction("""
                        () => {
                          const box = (of) => document.querySelector(of).getBoundingClientRect();
                          return [...document.querySelectorAll('#wall-main *')].map(e => e.getBoundingClientRect())
                              .every(p => p.top >= 0 && p.bottom <= box('.wall__rail').top + 1)
                              && box('.wall__rail').bottom <= box('#playback').top + 1;
                        }""");
                steps++;
                for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                    table.page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                    table.page().waitForFunction("""
                            () => {
                              const talk = document.querySelector('.lead__talk');
                              const low = document.querySelector('.lead').getBoundingClientRect().bottom;
                              return talk.scrollHeight <= talk.clientHeight
                                  && low <= document.getElementById('playback').getBoundingClientRect().top;
                            }""");
                }
            }
        }
        assertThat(steps).isGreaterThan(6);
    }

    @Test void a_helper_moves_what_was_opened_on_that_phone_and_only_watches_the_others() {
        Device phone = phone();
        assertThat(phone.find("#playback-play")).hasCount(0);

        String own = board.post("/api/playbacks", "{\"demo\":true}", board.helper()).text("id");
        phone.at("/classes/" + own + "/helper");
        phone.find("#playback-play").click();
        assertThat(phone.find("#playback-play")).hasAttribute("aria-label", "Play");
    }

    @Test void the_look_back_and_the_closed_class_on_the_start_page_lead_to_the_evening() {
        String closed = board.evening();
        board.stuckAtWicks(closed, 4);
        board.tap(closed, TestBoard.command("close")).ok();
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + closed + "/report");

        tablet.find("#watch").click();
        assertThat(tablet.find(".playback__mark")).containsText("Played back");

        tablet.at("/").find("[data-watch='" + closed + "']").click();
        assertThat(tablet.find(".playback__mark")).containsText("Played back");
        assertThat(tablet.find("#playback")).hasClass(Pattern.compile("playback--plays")); // its scripts are there
        tablet.find("#playback-more").click();
        tablet.find("#playback-stop").click();
        tablet.page().waitForURL("**/classes/" + closed + "/report");
    }
}
