package benchpace.web.studio;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Whose room it is, said with a finger or by keyboard, seen before it is saved, and had back. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StudioInABrowserTest extends LiveScreens {
    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
    }

    private Device page() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/studio");
    }

    private String saved() {
        return board.get("/api/studio", board.instructor()).text("name");
    }

    private static String lead(Locator in) {
        return (String) in.evaluate("e => getComputedStyle(e).getPropertyValue('--lead').trim()");
    }

    @Test void it_is_seen_as_it_will_look_then_saved_and_had_back_in_one_tap() {
        Device page = page();
        assertThat(page.find("#studio-undo")).isHidden();
        page.find("#studio-name").fill("Wachs & Dochtwerkstätte");
        page.find("#studio-colour").fill("#ffd400");

        assertThat(page.find(".shown--wall [data-shown=name]").first()).hasText("Wachs & Dochtwerkstätte");
        assertThat(page.find("#studio-told")).containsText("By day it is darker");
        assertThat(page.find("#studio-picker")).hasValue("#ffd400");
        assertThat(lead(page.find("[data-light=night]"))).isEqualTo("#ffd400");
        assertThat(lead(page.find("[data-light=day]").first())).isNotEqualTo("#ffd400");

        page.find("#studio-form [type=submit]").click();
        assertThat(page.find("#studio-answer")).containsText("Saved");
        assertThat(saved()).isEqualTo("Wachs & Dochtwerkstätte");
        page.page().waitForFunction("() => getComputedStyle(document.body).getPropertyValue('--lead').trim() "
                + "!== '#1f4d43'");

        page.find("#studio-undo").click();
        assertThat(page.find("#studio-answer")).containsText("as it was before");
        assertThat(page.find("#studio-name")).hasValue("");
        assertThat(page.find("#studio-undo")).isHidden();
        assertThat(saved()).isEmpty();
    }

    @Test void it_is_all_done_by_keyboard() {
        Device page = page();
        page.find("#studio-name").focus();
        page.page().keyboard().type("Hafenlicht");
        page.page().keyboard().press("Enter");
        assertThat(page.find("#studio-answer")).containsText("Saved");

        page.find("#studio-undo").focus();
        page.page().keyboard().press("Enter");
        assertThat(page.find("#studio-name")).isFocused();
        assertThat(saved()).isEmpty();
    }

    @Test void a_wall_at_a_classs_own_address_shows_the_studio_once_it_is_said() {
        Device wall = here(Device.wall(board, browser)).at("/classes/" + id + "/wall");
        Device page = page();
        page.find("#studio-name").fill("Hafenlicht");
        page.find("#studio-form [type=submit]").click();
        assertThat(page.find("#studio-answer")).containsText("Saved");

        wall.page().evaluate("() => dispatchEvent(new Event('online'))"); // asked at once, not in some seconds

        assertThat(wall.find(".wall__studio")).hasText("Hafenlicht");
    }

    @Test void two_devices_at_once_overwrite_nothing_unseen() {
        Device one = here(Device.tablet(board, browser)).pairedBy(board.instructor()).expectingRefusals().at("/studio");
        Device other = page();
        other.find("#studio-name").fill("Hafenlicht");
        other.find("#studio-form [type=submit]").click();
        assertThat(other.find("#studio-answer")).containsText("Saved");

        one.find("#studio-name").fill("Another");
        one.find("#studio-form [type=submit]").click();
        assertThat(one.find("#studio-answer")).containsText("changed on another page meanwhile");
        assertThat(saved()).isEqualTo("Hafenlicht");

        one.find("#studio-form [type=submit]").click();
        assertThat(one.find("#studio-answer")).containsText("Saved");
        one.find("#studio-undo").click();
        assertThat(one.find("#studio-name")).hasValue("Hafenlicht");
    }

    @Test void what_is_no_colour_is_told_at_its_field_and_nothing_is_saved() {
        Device page = here(Device.tablet(board, browser)).pairedBy(board.instructor()).expectingRefusals()
                .at("/studio");
        page.find("#studio-name").fill("Hafenlicht");
        page.find("#studio-colour").fill("greenish");
        page.find("#studio-form [type=submit]").click();

        assertThat(page.find("#studio-colour-wrong")).containsText("#1f4d43");
        assertThat(page.find("#studio-colour")).isFocused();
        assertThat(saved()).isEmpty();

        page.find("#studio-usual").click();
        page.find("#studio-form [type=submit]").click();
        assertThat(page.find("#studio-answer")).containsText("Saved");
        assertThat(page.find("#studio-colour-wrong")).isEmpty();
    }

    @Test void the_start_page_offers_it_and_can_be_told_later() {
        Device start = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/");
        assertThat(start.find("#your-studio")).isVisible();
        start.find("#studio-later").click();
        assertThat(start.find("#your-studio")).isHidden();
        start.at("/");
        assertThat(start.find("#your-studio")).isHidden();
        assertThat(start.find("#studio-link")).isVisible();

        Device other = here(Device.phone(board, browser)).pairedBy(board.instructor()).at("/");
        other.find("#studio-name").fill("Hafenlicht");
        other.find("#your-studio [type=submit]").click();
        assertThat(other.find("#your-studio")).hasCount(0);
        assertThat(saved()).isEqualTo("Hafenlicht");
    }
}
