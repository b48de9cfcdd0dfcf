package benchpace.web;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.deque.html.axecore.args.AxeRuleOptions;
import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Every page in light and dark against axe-core's rules, which follow WCAG 2.2 (https://www.w3.org/TR/WCAG22/), levels
 * A and AA; the size of targets (2.5.8) is one of those it asks for only when told to. The wall's words reach AAA
 * (1.4.6).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
public class AccessibilityTest extends LiveScreens {
    private static final String ENHANCED = "color-contrast-enhanced";
    /** What looks at colours: in the dark only these are others, the page is the same. */
    private static final List<String> OF_COLOURS = List.of("color-contrast", "link-in-text-block");

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/instructor");
    }

    private Device phone() {
        return here(Device.phone(board, browser)).pairedBy(board.helper()).at("/classes/" + id + "/helper");
    }

    private Device wall() {
        return here(Device.wall(board, browser)).at("/classes/" + id + "/wall");
    }

    public static AxeBuilder axe(Page page, ColorScheme scheme) {
        AxeBuilder axe = new AxeBuilder(page).setLegacyMode(true); // no frames, so no second page to sum up in
        boolean wall = page.querySelector("body.screen--wall") != null;
        if (scheme == ColorScheme.DARK) {
            return axe.withRules(wall ? Stream.concat(OF_COLOURS.stream(), Stream.of(ENHANCED)).toList() : OF_COLOURS);
        }
        AxeRunOptions options = new AxeRunOptions();
        options.setRules(wall ? Map.of("target-size", asked(), ENHANCED, asked()) : Map.of("target-size", asked()));
        return axe.options(options);
    }

    private static AxeRuleOptions asked() {
        AxeRuleOptions rule = new AxeRuleOptions();
        rule.setEnabled(true);
        return rule;
    }

    /** Shows the page in a scheme; colours on the way from one to the other are neither's. */
    public static void show(Page page, ColorScheme scheme) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        page.waitForFunction("() => !document.getAnimations().some(a => a instanceof CSSTransition)");
    }

    private static void assertSound(Device device, String situation) {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            show(device.page(), scheme);
            List<String> violations = axe(device.page(), scheme).analyze().getViolations().stream()
                    .map(rule -> rule.getId() + ": " + rule.getHelp() + " at " + rule.getNodes().stream()
                            .limit(3).map(node -> node.getTarget() + " " + node.getFailureSummary()).toList())
                    .toList();

            assertThat(violations).as(situation + ", " + scheme).isEmpty();
        }
    }

    private void allFinish(String step) {
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, finish(seat, step)).ok();
        }
    }

    private void poured() {
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            board.tap(id, opening(step)).ok();
            allFinish(step);
        }
        allFinish("centre");
    }

    /** Tablet, phone and wall of the class as it stands. */
    private void assertAllSound(String situation) {
        assertSound(tablet(), "tablet " + situation);
        assertSound(phone(), "phone " + situation);
        assertSound(wall(), "wall " + situation);
        letDevicesGo();
    }

    @Test void the_start_page_of_a_guest_a_helper_and_an_instructor() {
        assertSound(here(Device.phone(board, browser)).at("/"), "guest");
        assertSound(here(Device.phone(board, browser)).pairedBy(board.helper()).at("/"), "helper");
        assertSound(here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/"), "instructor");
    }

    @Test void the_start_page_with_closed_classes_unfolded_and_names_that_do_not_fit() {
        for (int i = 0; i < 5; i++) {
            board.tap(board.create("{\"planId\":\"table-of-six\"}"), command("close")).ok();
        }
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .expectingRefusals().at("/");
        tablet.find("#closed-classes summary").click();
        tablet.find("#class-names").fill("a\n".repeat(9));
        tablet.find("#set-up-form [type=submit]").click();
        assertThat(tablet.find("#set-up-answer")).containsText("seat 9");

        assertSound(tablet, "closed classes");
    }

    @Test void the_page_that_asks_to_pair_and_the_one_that_says_not_found() {
        assertSound(here(Device.phone(board, browser)).expectingRefusals().at("/classes/" + id + "/helper"),
                "pair first");
        assertSound(here(Device.phone(board, browser)).expectingRefusals().at("/no/such/page"), "not found");
    }

    @Test void the_page_on_which_a_studio_says_whose_room_it_is_and_all_pages_in_its_colour() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/studio");
        tablet.find("#studio-name").fill("Wachs- und Dochtwerkstätte am Alten Speicher, Schönfärberhof");
        tablet.find("#studio-place").fill("\u05E8\u05D7\u05D5\u05D1 \u05D4\u05E0\u05E8 3");
        tablet.find("#studio-colour").fill("#ffd400");
        tablet.find("#studio-form [type=submit]").click();
        assertThat(tablet.find("#studio-answer")).containsText("Saved");
        assertSound(tablet, "studio");
        assertSound(here(Device.phone(board, browser)).pairedBy(board.instructor()).at("/studio"), "studio, a phone");
        assertSound(here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/"), "start in its colour");
        assertAllSound("in the studio's colour");
    }

    @Test void the_page_of_the_look() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/style");
        tablet.expectingAxeInShadowTrees();
        assertSound(tablet, "the look");
    }

    @Test void the_pages_on_which_a_class_is_set_up_and_corrected_and_its_cards() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor());
        Device phone = here(Device.phone(board, browser)).pairedBy(board.instructor());
        tablet.at("/classes/new");
        tablet.find("#paste summary").click();
        assertSound(tablet, "a new class");
        assertSound(phone.at("/classes/" + id + "/setup"), "a class that has not begun");
        assertSound(tablet.at("/classes/" + id + "/cards"), "place cards");
        board.tap(id, opening("wicks")).ok();
        assertSound(phone.at("/classes/" + id + "/setup"), "seats and names");
    }

    @Test void a_class_before_it_begins() {
        assertAllSound("before");
    }

    @Test void a_class_at_a_step_with_seats_in_every_state() {
        board.tap(id, opening("wicks")).ok();
        board.tap(id, finish(1, "wicks")).ok();
        board.tap(id, command("pause").put("seat", 2)).ok();
        board.tap(id, command("leave").put("seat", 3)).ok();
        board.tap(id, command("pair").put("seat", 4).put("with", 5)).ok();
        board.tap(id, command("expect").put("seat", 6)).ok();
        board.tap(id, command("note").put("text", "The lamp by the door flickers")).ok();
        board.testClock().advanceMinutes(20);
        board.tap(id, command("claim").put("seat", 7).put("helper", "AB")).ok();

        assertAllSound("in step");
    }

    @Test void a_class_in_the_cure_and_when_candles_should_be_tried() {
        poured();
        board.testClock().advanceMinutes(20);
        board.tap(id, command("judge-set").put("seat", 1)).ok();
        assertAllSound("setting");
        board.testClock().advanceMinutes(60);
        assertAllSound("try it");
    }

    @Test void a_class_that_is_closed() {
        poured();
        board.tap(id, command("close")).ok();
        assertAllSound("closed");
    }

    @Test void a_class_looked_back_on() {
        board.testClock().advanceMinutes(9);
        poured();
        board.tap(id, command("note").put("text", "two wicks short")).ok();
        String report = "/classes/" + id + "/report";
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at(report);
        assertThat(tablet.find("#way-title")).isVisible();
        assertThat(tablet.find("#tried-title")).isVisible();
        assertThat(tablet.find(".contents")).isHidden();
        assertSound(tablet, "report");
        Device phone = here(Device.phone(board, browser)).pairedBy(board.instructor()).at(report);
        assertSound(phone, "report on a phone");
        phone.find(".contents summary").click();
        assertSound(phone, "report on a phone, its links shown");
        phone.find(".contents a[href='#flags-title']").click();
        assertThat(phone.find("#flags-title")).isInViewport();
    }

    @Test void past_classes_side_by_side() {
        pastClass();
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/history");
        assertThat(tablet.find("#undrawn")).isVisible();
        assertSound(tablet, "history of one class");
        id = board.create("{\"planId\":\"evening-pour\",\"seats\":8}");
        pastClass();
        tablet.at("/history");
        assertThat(tablet.find("#trend-late-title")).isVisible();
        assertSound(tablet, "history");
        assertSound(here(Device.phone(board, browser)).pairedBy(board.instructor()).at("/history"),
                "history on a phone");
    }

    private void pastClass() {
        poured();
        board.testClock().advanceMinutes(70);
        board.tap(id, command("judge-set").put("seat", 1)).ok();
        board.tap(id, command("close")).ok();
        await().atMost(Duration.ofSeconds(30)).until(() -> board.history().classes().stream()
                .allMatch(past -> past.figures().isPresent()));
    }

    @Test void a_crowd_of_24_and_of_60() {
        id = board.create("{\"planId\":\"big-table\",\"seats\":24}");
        board.tap(id, opening("welcome")).ok();
        assertAllSound("24 seats");
        id = board.create("{\"planId\":\"big-table\",\"seats\":60}");
        board.tap(id, opening("welcome")).ok();
        assertSound(tablet(), "tablet with 60 seats");
    }

    @Test void the_sheet_and_the_dialogs() {
        poured();
        Device tablet = tablet();
        tablet.find(".place__more[data-open-seat='1']").click();
        assertThat(tablet.find("#sheet-close")).isVisible();
        tablet.find(".tap__mend summary").first().click();
        assertSound(tablet, "seat sheet");
        tablet.page().keyboard().press("Escape");
        for (String dialog : List.of("note-dialog", "menu-dialog", "guests-dialog", "chime-dialog", "keys-dialog")) {
            if (!tablet.find("[data-open='" + dialog + "']").isVisible()) {
                tablet.find("#menu-button").click();
            }
            tablet.find("[data-open='" + dialog + "']").click();
            assertThat(tablet.find("#" + dialog)).isVisible();
            assertSound(tablet, dialog);
            tablet.page().keyboard().press("Escape");
        }
        Device phone = phone();
        phone.find("[data-open='me-dialog']").click();
        assertThat(phone.find("#me-dialog")).isVisible();
        assertSound(phone, "initials");
        phone.page().keyboard().press("Escape");
        phone.find("#menu-button").click();
        assertThat(phone.find("#menu-dialog")).isVisible();
        assertSound(phone, "menu of a phone");
    }

    @Test void the_question_before_somebody_is_left_behind() {
        board.tap(id, opening("welcome")).ok();
        Device tablet = tablet();
        tablet.find("#next-button").click();
        assertThat(tablet.find("#next-dialog")).isVisible();

        assertSound(tablet, "next dialog");
    }

    @Test void the_question_before_a_class_is_closed_over_candles_that_are_setting() {
        poured();
        board.tap(id, opening("trim")).ok();
        board.tap(id, opening("farewell")).ok();
        Device tablet = tablet();
        tablet.find("#next-button").click();
        assertThat(tablet.find("#close-ask")).containsText("still setting");

        assertSound(tablet, "close dialog");
    }

    @Test void a_seat_behind_and_one_asked_about() {
        board.stuckAtWicks(id, 4);
        for (int i = 0; i < 20 && board.state(id).json().get("flags").isEmpty(); i++) {
            board.testClock().advanceMinutes(1);
        }
        assertAllSound("asked");
        board.testClock().advanceMinutes(10);
        assertAllSound("behind");
        Device tablet = tablet();
        tablet.find("#next-button").click();
        assertThat(tablet.find("#next-dialog .left-behind__cost").first()).isVisible();
        assertSound(tablet, "sweep");
    }

    @Test void the_page_behind_a_code_and_the_sheet_of_codes() {
        String code = "/g/" + board.guestCode(id, 4);
        assertSound(here(Device.phone(board, browser)).at(code), "guest, off");
        board.tap(id, command("guests-may-tell").put("on", true)).ok();
        board.tap(id, opening("wicks")).ok();
        Device guest = here(Device.phone(board, browser)).at(code);
        assertSound(guest, "guest, asked");
        guest.find(".guest__button").click();
        assertThat(guest.find(".guest__mark")).isVisible();
        assertSound(guest, "guest, told");
        assertSound(here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + id + "/guest-codes"), "codes");
    }
}
