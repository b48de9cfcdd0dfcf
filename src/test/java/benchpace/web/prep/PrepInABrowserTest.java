package benchpace.web.prep;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.web.AccessibilityTest;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Two people prepare one class, each with a device, and take a sheet of paper along. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrepInABrowserTest extends LiveScreens {
    private static final Pattern PAGE_OF_PAPER = Pattern.compile("/Type\\s*/Page\\b(?!s)");

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = LaidTable.on(board, LaidTable.plan(), Duration.ofHours(2));
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/prep");
    }

    private Device phone() {
        return here(Device.phone(board, browser)).pairedBy(board.helper()).at("/classes/" + id + "/prep");
    }

    private static Locator box(Device device, String item) {
        return device.find("[data-tick='" + item + "']");
    }

    private static Locator who(Device device, String item) {
        return device.find(".item__line:has([data-tick='" + item + "']) [data-who]");
    }

    private static void assertOnPaper(Device device, String what) {
        for (String format : List.of("A4", "Letter")) {
            byte[] paper = device.page().pdf(new Page.PdfOptions().setFormat(format));
            long pages = PAGE_OF_PAPER.matcher(new String(paper, StandardCharsets.ISO_8859_1)).results().count();

            assertThat(pages).as(what + " on " + format).isBetween(1L, 2L);
        }
    }

    @Test void what_one_ticks_off_shows_on_the_other_with_who_did_and_takes_neither_focus_nor_place() {
        Device tablet = tablet();
        Device phone = phone();
        assertThat(phone.find("#prep-timetable")).containsText("Done by");
        box(phone, "shared:wipe").focus();
        Object before = phone.page().evaluate("scrollY");

        box(tablet, "place:wick").check();

        assertThat(box(phone, "place:wick")).isChecked();
        assertThat(who(phone, "place:wick")).containsText("instructor, ");
        assertThat(phone.find("#prep-lists .sheet__heading").first()).containsText("1 of 3 done");
        assertThat(box(phone, "shared:wipe")).isFocused();
        assertThat(phone.page().evaluate("scrollY")).isEqualTo(before);
        box(phone, "place:wick").uncheck();
        assertThat(box(tablet, "place:wick")).not().isChecked();
    }

    @Test void what_is_ticked_off_without_a_network_waits_and_arrives() {
        Device tablet = tablet();
        Device phone = phone();
        assertThat(phone.find("#prep-next")).containsText("2 things to buy");
        phone.offline(true);
        box(phone, "buy:wick").check();
        assertThat(box(phone, "buy:wick")).isChecked();
        phone.offline(false);

        assertThat(box(tablet, "buy:wick")).isChecked();
        assertThat(tablet.find("#prep-next")).containsText("1 thing to buy");
        assertThat(phone.find("#prep-next")).containsText("1 thing to buy");
    }

    @Test void the_melter_is_counted_down_to_on_the_page_and_on_the_start_page() {
        Device tablet = tablet();
        assertThat(tablet.find("#prep-next .next__first")).containsText("Switch the melter on at ");
        assertThat(tablet.find("#prep-next .count")).hasText(Pattern.compile("in 4\\d min|in 5\\d min"));
        assertThat(tablet.find("#prep-next .count")).isVisible();
        Device start = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/");
        assertThat(start.find("#next .count")).hasText(Pattern.compile("in 4\\d min|in 5\\d min"));

        board.testClock().advanceMinutes(60);
        board.prep().set(id, "place:wick", true, "instructor");

        assertThat(tablet.find("#prep-next")).containsText("should be on since");
        assertThat(start.find("#next")).containsText("should be on since");
        start.find("#next a").first().click();
        assertThat(start.find("#prep-lists")).isVisible();
    }

    @Test void a_plan_is_worked_out_anew_while_seats_are_typed() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/plans/evening-pour/prep?seats=4");
        assertThat(tablet.find(".prep__when")).hasText("4 places");
        tablet.find("#seats").fill("12");
        assertThat(tablet.find(".prep__when")).hasText("12 places");
        assertThat(tablet.find("#seats")).isFocused();
        assertThat(tablet.find("#prep-timetable")).containsText("Done within");
        assertThat(tablet.page()).hasURL(Pattern.compile("seats=12"));
    }

    @Test void on_paper_it_is_two_pages_at_most_of_either_size() {
        Device tablet = tablet();
        assertThat(tablet.find("#prep-timetable")).containsText("What would help");
        assertOnPaper(tablet, "class");
        tablet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(tablet.find("#print")).isHidden();
        assertThat(tablet.find("#safety-title")).isVisible();
    }

    /** Every plan that comes with the program, for eight seats. */
    @Test void every_starter_plan_is_two_pages_of_paper_at_most() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor());
        for (Plan plan : Demo.plans()) {
            tablet.at("/plans/" + plan.id() + "/prep?seats=8");
            assertThat(tablet.find("#prep-timetable table")).isVisible();
            assertOnPaper(tablet, plan.name());
        }
    }

    @Test void every_prep_page_is_sound_for_all_readers() {
        for (Device device : List.of(tablet(), phone(), here(Device.tablet(board, browser))
                .pairedBy(board.instructor()).at("/plans/evening-pour/prep"))) {
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                AccessibilityTest.show(device.page(), scheme);
                assertThat(AccessibilityTest.axe(device.page(), scheme).analyze().getViolations().stream()
                        .map(v -> v.getId() + " " + v.getNodes()).toList()).as(device.page().url()).isEmpty();
            }
        }
    }
}
