package benchpace.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The way from one screen to the others: a menu in words. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MenuInABrowserTest extends LiveScreens {
    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/instructor");
    }

    private static List<String> doors(Device device) {
        return device.find("#menu-dialog .menu__entry b").allInnerTexts();
    }

    @Test void the_tablets_menu_names_every_screen_in_words() {
        Device tablet = tablet();
        Locator button = tablet.find("#menu-button");
        assertThat(button).hasText("Menu");

        button.click();

        assertThat(doors(tablet)).containsExactly("The table", "Prep", "Helper's phone", "Wall", "The wait",
                "Look back", "Seats and names", "Calendar file", "Pickup shelf", "History", "Studio",
                "Devices", "Start",
                "Guests' codes", "Chime", "Keys");
        assertThat(tablet.find("#menu-dialog [aria-current=page]")).containsText("The table");
    }

    @Test void every_door_of_the_menu_leads_somewhere() {
        Device tablet = tablet();
        tablet.find("#menu-button").click();

        for (Locator door : tablet.find("#menu-dialog a").all()) {
            assertThat(board.get(door.getAttribute("href"), board.instructor()).status())
                    .as(door.innerText()).isEqualTo(200);
        }
    }

    @Test void the_menu_works_by_keyboard_and_gives_way_to_what_it_opens() {
        Device tablet = tablet();
        tablet.find("#menu-button").focus();
        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find("#menu-dialog")).isVisible();

        tablet.find("#menu-dialog button:has-text('Chime')").focus();
        tablet.page().keyboard().press("Enter");

        assertThat(tablet.find("#chime-dialog")).isVisible();
        assertThat(tablet.find("#menu-dialog")).isHidden();
        tablet.page().keyboard().press("Escape");
        assertThat(tablet.find("#chime-dialog")).isHidden();
        assertThat(tablet.find("#menu-button")).isFocused();
    }

    @Test void the_keys_have_a_list_of_their_own_that_the_question_mark_still_opens() {
        Device tablet = tablet();
        assertThat(tablet.find("#next")).isVisible();

        tablet.page().keyboard().press("?");

        assertThat(tablet.find("#keys-dialog h2")).hasText("Keys");
        assertThat(tablet.find("#keys-dialog a")).hasCount(0);
        tablet.page().keyboard().press("Escape");
        tablet.page().keyboard().press("m");
        assertThat(tablet.find("#menu-dialog")).isVisible();
    }

    @Test void a_helpers_menu_has_the_doors_that_open_for_helpers() {
        Device phone = here(Device.phone(board, browser)).pairedBy(board.helper()).at("/classes/" + id + "/helper");

        phone.find("#menu-button").click();

        assertThat(doors(phone))
                .containsExactly("Prep", "Helper's phone", "Wall", "The wait", "Pickup shelf", "Start", "Chime");
        for (Locator door : phone.find("#menu-dialog a").all()) {
            assertThat(board.get(door.getAttribute("href"), board.helper()).status())
                    .as(door.innerText()).isEqualTo(200);
        }
        phone.find("#menu-dialog a:has-text('The wait')").click();
        phone.page().waitForURL(Pattern.compile(".*/wait"));
    }

    @Test void the_menu_stays_in_reach_on_the_narrowest_phone() {
        id = board.create("{\"planId\":\"table-of-six\",\"name\":\"" + "Candles for a long evening ".repeat(3).strip()
                + "\"}");
        for (String screen : List.of("instructor", "helper")) {
            Device phone = here(Device.phone(board, browser)).pairedBy(board.instructor());
            phone.page().setViewportSize(320, 700);
            phone.at("/classes/" + id + "/" + screen);

            var box = phone.find("#menu-button").boundingBox();

            assertThat(box.x + box.width).as(screen).isLessThanOrEqualTo(320);
            assertThat(box.x).as(screen).isGreaterThanOrEqualTo(0);
            assertThat(box.height).as(screen).isGreaterThanOrEqualTo(44);
            assertThat((Boolean) phone.page().evaluate("document.documentElement.scrollWidth <= innerWidth"))
                    .as(screen).isTrue();
            phone.find("#menu-button").click();
            assertThat(phone.find("#menu-dialog")).isVisible();
            assertThat((Boolean) phone.page().evaluate(
                    "(d => d.scrollWidth <= d.clientWidth)(document.getElementById('menu-dialog'))")).as(screen)
                    .isTrue();
        }
    }
}
