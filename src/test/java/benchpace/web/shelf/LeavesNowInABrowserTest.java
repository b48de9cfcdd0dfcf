package benchpace.web.shelf;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Device;
import benchpace.web.TestBoard;
import benchpace.web.classes.TapScreens;
import com.microsoft.playwright.Route;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** "Leaves now" on a network so weak that what it needs comes late or not at all. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LeavesNowInABrowserTest extends TapScreens {
    private static final String NEEDED = "**/static/js/leave.js";

    @Override protected void begin() {
        super.begin();
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            board.tap(id, TestBoard.opening(step)).ok();
        }
        board.tap(id, TestBoard.finish(3, "pour")).ok();
    }

    private Device table() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/instructor");
    }

    private static void leavesNow(Device tablet) {
        tablet.find(".place__more[data-open-seat='3']").click();
        tablet.find("#sheet-leave").click();
    }

    @Test void a_press_before_what_it_needs_is_there_is_kept_and_done_once_it_is() {
        Device tablet = table();
        AtomicReference<Route> held = new AtomicReference<>();
        tablet.page().route(NEEDED, held::set);
        leavesNow(tablet);
        await().atMost(PATIENCE).pollInSameThread().until(() -> {
            tablet.page().waitForTimeout(20);
            return held.get() != null;
        });
        assertThat(tablet.find("#leave-dialog")).isHidden();

        held.get().resume();

        assertThat(tablet.find("#leave-dialog #leave-send")).isVisible();
    }

    @Test void a_press_whose_sheet_was_closed_meanwhile_opens_nothing() {
        Device tablet = table();
        AtomicReference<Route> held = new AtomicReference<>();
        tablet.page().route(NEEDED, held::set);
        leavesNow(tablet);
        tablet.find("#sheet-close").click();
        await().atMost(PATIENCE).pollInSameThread().until(() -> {
            tablet.page().waitForTimeout(20);
            return held.get() != null;
        });

        held.get().resume();

        tablet.page().evaluate("() => import('/static/js/leave.js')");
        tablet.page().waitForTimeout(200);
        assertThat(tablet.find("#leave-dialog")).isHidden();
        tablet.find(".place__more[data-open-seat='3']").click();
        tablet.find("#sheet-leave").click();
        assertThat(tablet.find("#leave-dialog #leave-send")).isVisible();
    }

    @Test void what_cannot_be_had_is_said_and_asked_for_again_at_the_next_press() {
        Device tablet = table();
        tablet.page().route(NEEDED, Route::abort);
        leavesNow(tablet);
        assertThat(tablet.find("#messages")).containsText("Seat 3 cannot leave by the shelf just now");
        assertThat(tablet.find("#leave-dialog")).isHidden();
        tablet.page().unroute(NEEDED);

        tablet.find("#sheet-leave").click();

        assertThat(tablet.find("#leave-dialog #leave-send")).isVisible();
    }
}
