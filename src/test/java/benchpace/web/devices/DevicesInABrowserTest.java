package benchpace.web.devices;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.AccessibilityTest;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The instructor lets devices in and lets them go, and those that are let go say so. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DevicesInABrowserTest extends LiveScreens {
    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
        board.testClock().advanceMinutes(3); // the phone comes later than the tablet
        board.helper();
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/devices");
    }

    private void press(Device tablet, String button) {
        tablet.find(button).click();
        tablet.find("#ask-yes").click();
    }

    @Test void a_phone_that_is_signed_out_says_so_and_keeps_what_it_has_not_sent() {
        Device phone = here(Device.phone(board, browser)).pairedBy(board.helper()).expectingRefusals()
                .at("/classes/" + id + "/helper");
        await().atMost(Duration.ofSeconds(10))
                .until(() -> board.get("/health", "").json().get("screens").intValue() == 1);
        Device tablet = tablet();
        assertThat(tablet.find(".row:has-text('Helper AB')")).containsText("Has a screen open now");

        press(tablet, ".row:has-text('Helper AB') [data-act=sign-out]");

        assertThat(phone.find("#status")).containsText("This device was signed out.");
        assertThat(phone.find("#status a")).hasAttribute("href", "/");
        assertThat(tablet.find(".row")).hasCount(1);
        phone.page().evaluate("import('/static/js/taps.js').then((m) => m.send({ type: 'note', text: 'kept' }))");
        assertThat(phone.find("#status")).containsText("1 tap not sent yet");
        assertThat((String) phone.page().evaluate("JSON.stringify({ ...localStorage })")).contains("kept");
        assertThat(board.state(id).seq()).isEqualTo(1);
    }

    @Test void links_and_pins_are_made_anew_on_the_page() {
        Device tablet = tablet();
        String before = tablet.find("#helper-link .address a").innerText();

        press(tablet, "[data-act=helper-link]");
        assertThat(tablet.find("#helper-link .address a")).not().hasText(before);
        assertThat(tablet.find("#helper-link .address a")).hasText(Pattern.compile(".*/helper#helper=[\\w-]{27}"));
        tablet.find("[data-act=instructor-link]").click();
        assertThat(tablet.find("#instructor-link svg.qr path.qr__ink")).isVisible();
        press(tablet, "[data-act=pins]");
        assertThat(tablet.find("#new-pin")).containsText("chosen");
        assertThat(tablet.find("#helper-pin")).hasText(board.access().pins().helper());

        String link = tablet.find("#instructor-link .address a").innerText();
        Device second = here(Device.tablet(board, browser)).at(link.substring(link.indexOf("/#")));
        assertThat(second.find(".paired")).containsText("instructor");
    }

    @Test void all_devices_are_signed_out_after_a_question_and_the_way_back_is_told() {
        Device tablet = tablet();
        tablet.find("[data-act=all]").click();
        tablet.find("#ask-dialog [data-dismiss]").click();
        assertThat(board.get("/api/classes", board.helper()).status()).isEqualTo(200);

        press(tablet, "[data-act=all]");

        assertThat(tablet.find("#out-dialog")).containsText("Your PIN is the one that was chosen");
        assertThat(board.get("/api/classes", board.helper()).status()).isEqualTo(401);
        tablet.find("#out-dialog a").click();
        assertThat(tablet.find("#pair-form")).isVisible();
    }

    @Test void a_helper_signs_the_own_phone_out_after_a_question() {
        Device phone = here(Device.phone(board, browser)).pairedBy(board.helper()).at("/");
        phone.find("#sign-out").click();
        phone.find("#sign-out-not").click();
        phone.find("#sign-out").click();

        phone.find("#sign-out-form [type=submit]").click();

        assertThat(phone.find("#pair-form")).isVisible();
        assertThat(board.get("/api/classes", board.helper()).status()).isEqualTo(401);
        phone.assertNoComplaint();
    }

    @Test void those_who_are_in_stand_by_what_lets_their_like_in() {
        Device tablet = tablet();

        assertThat(tablet.find(".card:has(#helper-link) .row")).containsText("Helper AB");
        assertThat(tablet.find(".card:has(#instructor-link) .row")).containsText("this device");
        assertThat(tablet.find(".card:has(#wall-link) .row")).hasCount(0);
    }

    @Test void a_device_is_named_and_is_called_so() {
        Device tablet = tablet();

        tablet.find(".row:has-text('Helper AB') [data-name]").click();
        tablet.find("#device-name").fill("Counter phone");
        tablet.find("#device-name").press("Enter");

        assertThat(tablet.find(".row:has-text('Counter phone')")).containsText("Helper AB");
        tablet.assertNoComplaint();
    }

    @Test void a_walls_link_pairs_the_television_with_or_without_a_class() {
        Device wall = here(Device.wall(board, browser)).at("/wall#wall=" + board.access().keys().wall());

        assertThat(wall.page()).hasURL(Pattern.compile(".*/wall$"));
        assertThat(wall.find("body[data-role=wall]")).isAttached();
        await().atMost(Duration.ofSeconds(20)).until(() -> board.get("/api/devices", board.instructor()).body()
                .contains("\"looking\":true"));
        assertThat(tablet().find(".row:has-text('Wall')")).containsText("Has a screen open now");
        wall.assertNoComplaint();
    }

    @Test void the_page_is_sound_in_light_and_dark_on_tablet_and_phone() {
        for (Device device : List.of(tablet(), here(Device.phone(board, browser)).pairedBy(board.instructor())
                .at("/devices"))) {
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                AccessibilityTest.show(device.page(), scheme);
                assertThat(AccessibilityTest.axe(device.page(), ColorScheme.LIGHT).analyze().getViolations())
                        .as("%s", scheme).isEmpty();
            }
            assertThat((Boolean) device.page().evaluate("document.documentElement.scrollWidth <= innerWidth")).isTrue();
        }
    }
}
