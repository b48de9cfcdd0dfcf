package benchpace.web.history;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.history.PastClass.Standing;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Locator;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The list of past classes left open while another class ends; the page's own clock is moved by the test. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HistoryInABrowserTest extends LiveScreens {
    private static final int PAST = 8;
    private static final int A_WHILE_MILLIS = 20_000;
    private final List<String> past = new ArrayList<>();

    @Override protected void begin() {
        board = TestBoard.open(data);
        for (int i = 1; i <= PAST; i++) {
            past.add(over("Evening " + i));
        }
        reckoned();
        id = past.get(2);
    }

    private String over(String name) {
        String over = board.create(Json.text(Json.object().put("planId", "evening-pour").put("seats", 2)
                .put("name", name)));
        board.tap(over, TestBoard.opening("welcome")).ok();
        board.testClock().advanceMinutes(5);
        board.tap(over, TestBoard.command("close")).ok();
        board.testClock().advanceMinutes(60);
        return over;
    }

    private void reckoned() {
        await().atMost(Duration.ofSeconds(60)).until(() -> board.history().classes().stream()
                .noneMatch(c -> c.standing() == Standing.TO_COME));
    }

    private Device page() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor());
        tablet.page().clock().install();
        tablet.at("/history");
        assertThat(tablet.find("#count")).hasText(PAST + " classes");
        return tablet;
    }

    private Locator row(Device device, String classId) {
        return device.find("#class-" + classId);
    }

    private static double top(Locator row) {
        return ((Number) row.evaluate("row => row.getBoundingClientRect().top")).doubleValue();
    }

    @Test void a_class_that_ends_meanwhile_appears_and_is_counted() {
        Device tablet = page();
        tablet.page().evaluate("() => { window.stayed = true; }");
        String fresh = over("Just now");
        reckoned();

        tablet.page().clock().runFor(A_WHILE_MILLIS);

        assertThat(row(tablet, fresh)).containsText("No candle was poured.");
        assertThat(tablet.find("#count")).hasText(PAST + 1 + " classes");
        assertThat((Boolean) tablet.page().evaluate("() => window.stayed")).as("not loaded anew").isTrue();
    }

    @Test void what_is_read_stays_where_it_is() {
        Device tablet = page();
        row(tablet, id).evaluate("row => row.scrollIntoView({ block: 'center', behavior: 'instant' })");
        double before = top(row(tablet, id));
        String fresh = over("Just now");
        reckoned();

        tablet.page().clock().runFor(A_WHILE_MILLIS);

        assertThat(row(tablet, fresh)).hasCount(1);
        assertThat(top(row(tablet, id))).isCloseTo(before, within(1.0));
    }

    @Test void where_somebody_stands_on_a_link_it_waits_until_they_are_gone() {
        Device tablet = page();
        Locator link = row(tablet, id).locator("a");
        link.focus();
        String fresh = over("Just now");
        reckoned();

        tablet.page().clock().runFor(A_WHILE_MILLIS);
        assertThat(link).isFocused();
        assertThat(row(tablet, fresh)).hasCount(0);

        link.blur();
        tablet.page().clock().runFor(A_WHILE_MILLIS);
        assertThat(row(tablet, fresh)).hasCount(1);
    }
}
