package benchpace.web.report;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A change that would have saved time, made in a copy of the plan by one press. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatIfInABrowserTest extends LiveScreens {
    private static final String CHANGE = "[data-change='beforehand-wicks']";
    private static final int A4_WIDE = 794;
    private static final int A4_HIGH = 1123;
    private final List<String> posts = new CopyOnWriteArrayList<>();

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
        SlowWick.pour(board, id);
    }

    private Device lookBack() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + id + "/report");
        assertThat(tablet.find(".suggestion " + CHANGE)).isVisible();
        tablet.page().onRequest(request -> {
            if (request.method().equals("POST")) {
                posts.add(request.url());
            }
        });
        return tablet;
    }

    @Test void one_copy_is_made_however_often_it_is_pressed_and_the_page_leads_to_it() {
        Device tablet = lookBack();

        tablet.find(".suggestion " + CHANGE).dblclick();

        Locator made = tablet.find(".suggestion .what-if__done a");
        assertThat(made).hasText("Evening pour, Set the wick beforehand");
        assertThat(made).isFocused();
        assertThat(tablet.find("#what-if-answer")).containsText("is among your plans");
        assertThat(tablet.find(CHANGE)).hasCount(0); // nor below, among all that was tried
        assertThat(posts).hasSize(1);

        made.click();
        tablet.page().waitForURL("**/plans/**");
        assertThat(tablet.find("#edit-title")).hasText("Evening pour, Set the wick beforehand");
    }

    @Test void by_keys_on_two_pages_at_once_it_is_still_one_copy() {
        Device tablet = lookBack();
        Device other = lookBack();
        tablet.find(".suggestion " + CHANGE).focus();
        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find(".suggestion .what-if__done a")).isFocused();
        String first = tablet.find(".suggestion .what-if__done a").getAttribute("href");

        other.find(".suggestion " + CHANGE).focus();
        other.page().keyboard().press("Enter");

        assertThat(other.find(".suggestion .what-if__done a")).hasAttribute("href", first);
        tablet.page().reload();
        assertThat(tablet.find(".suggestion .what-if__done a")).hasAttribute("href", first);
        tablet.at("/plans");
        assertThat(tablet.find("[data-name='Evening pour, Set the wick beforehand']")).hasCount(1);
        assertThat(tablet.find("main a[href='" + first + "']")).isVisible();
    }

    @Test void it_prints_with_what_was_opened_and_without_buttons_on_a_sheet_of_paper() {
        Device tablet = lookBack();
        tablet.find(".tried__one summary").first().click();
        assertThat(tablet.find(".tried__one[open] .tried__why")).isVisible();

        tablet.page().setViewportSize(A4_WIDE, A4_HIGH);
        tablet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

        assertThat(tablet.find(".tried__one[open] .tried__why")).isVisible();
        assertThat(tablet.find(".suggestion__saving").first()).isVisible();
        assertThat(tablet.find("main button:visible")).hasCount(0);
        assertThat((Boolean) tablet.page().evaluate("() => document.documentElement.scrollWidth <= innerWidth"))
                .as("nothing to the side").isTrue();
        assertThat((Boolean) tablet.page().evaluate("() => [...document.querySelectorAll('#what-if *')]"
                + ".every(e => e.scrollWidth <= e.clientWidth + 1 || getComputedStyle(e).display === 'inline')"))
                .as("nothing is cut").isTrue();
    }
}
