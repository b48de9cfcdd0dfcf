package benchpace.web.learned;

import static benchpace.web.cure.CureBoard.wish;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Browsers;
import benchpace.web.cure.CureBoard;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What past classes taught, decided with a finger. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class LearnedInABrowserTest {
    @TempDir
    private Path data;
    private CureBoard board;
    private Page page;

    @BeforeEach void open(Browser browser) {
        board = new CureBoard(data);
        page = browser.newContext(new Browser.NewContextOptions().setViewportSize(1280, 800)).newPage();
        page.navigate(board.link());
        page.waitForSelector("#set-up-form");
        String id = board.create("evening-pour");
        board.minute(1).tap(id, wish("open-step").put("step", "welcome"));
        board.minute(15);
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, wish("finish-step").put("step", "vessel").put("seat", seat));
        }
        board.minute(40);
        for (String step : new String[] {"wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.tap(id, wish("open-step").put("step", step));
        }
        board.tap(id, wish("finish-step").put("step", "pour").put("seat", 1));
        board.minute(60).tap(id, wish("read-temperature").put("seat", 1).put("celsius", 40));
        board.tap(id, wish("close"));
        await().atMost(Duration.ofSeconds(20)).until(() -> board.get("/api/learned/rooms").body().contains(id));
        page.navigate(board.address() + "/history/learned");
    }

    @AfterEach void close() {
        page.context().close();
        board.close();
    }

    private void noViolations() {
        assertThat(new AxeBuilder(page).analyze().getViolations().stream().map(v -> v.getId() + " " + v.getNodes()
                .stream().map(n -> n.getTarget().toString()).toList()).toList()).isEmpty();
    }

    @Test void a_class_is_taken_back_and_counts_again_and_steps_are_taken_over() {
        noViolations();
        page.locator("[data-room-lesson=DELETE]").click();
        assertThat(page.locator("#room-1")).containsText("it teaches no more");
        assertThat(page.locator("#room-1")).containsText("Nothing that was taught here counts.");
        noViolations();

        page.locator("[data-room-lesson=POST]").click();
        assertThat(page.locator("#room-1")).containsText("Accepted on");
        page.locator("[data-step-lesson=POST]").first().click();
        assertThat(page.locator("[data-step-lesson=DELETE]").first()).isVisible();
        page.setViewportSize(390, 844);
        noViolations();
        assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= innerWidth")).isTrue();
    }

    @Test void its_column_of_buttons_is_not_on_paper() {
        assertThat(page.locator("td.taught__one").first()).isVisible();
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        for (int width : new int[] {720, 390}) {
            page.setViewportSize(width, 1000);
            assertThat(page.locator(".taught__one:visible")).hasCount(0);
        }
    }

    @Test void a_page_that_is_behind_says_so_and_decides_nothing() {
        Page other = page.context().newPage();
        other.navigate(board.address() + "/history/learned");
        other.locator("[data-accept-room]").click();
        assertThat(other.locator("#room-1")).containsText("Accepted on");

        page.locator("[data-room-lesson=DELETE]").click();

        assertThat(page.locator("#room-1 .form__answer")).containsText("has changed meanwhile");
        page.reload();
        assertThat(page.locator("#room-1")).containsText("Accepted on");
    }
}
