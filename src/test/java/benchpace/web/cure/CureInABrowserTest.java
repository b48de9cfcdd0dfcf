package benchpace.web.cure;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The cure as a finger meets it. Accessibility by axe-core's rules (WCAG 2 A and AA among them). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class CureInABrowserTest {

    @TempDir
    private Path data;
    private CureBoard board;
    private Page page;

    @BeforeEach void open(Browser browser) {
        board = new CureBoard(data);
        page = browser.newContext(new Browser.NewContextOptions().setViewportSize(1280, 800)).newPage();
        page.navigate(board.link());
        page.waitForSelector("#set-up-form");
    }

    @AfterEach void close() {
        page.context().close();
        board.close();
    }

    private String evening() {
        String id = board.poured(40, 1, 2);
        board.centred(id, 1, 2);
        board.minute(54);
        page.navigate(board.address() + "/classes/" + id + "/instructor");
        return id;
    }

    private void noViolations() {
        assertThat(new AxeBuilder(page).analyze().getViolations().stream().map(v -> v.getId() + " " + v.getNodes()
                .stream().map(n -> n.getTarget().toString()).toList()).toList()).isEmpty();
    }

    @Test void a_reading_typed_on_the_sheet_moves_the_range_and_undo_moves_it_back() {
        String id = evening();
        String before = page.locator("#tile-2 .face__line").textContent();
        page.locator("#table [data-open-seat='1']").click();
        page.locator("#sheet-celsius").fill("36");
        page.locator("#sheet-reading").click();

        assertThat(page.locator("#fit")).containsText("Room refitted from the reading at seat 1");
        assertThat(page.locator("#tile-2 .face__line")).not().hasText(before);
        assertThat(page.locator("#sheet-body .taps")).containsText("36 °C read at seat 1");
        page.locator("#sheet-body .taps .tap").first().getByText("Take it back").click();

        assertThat(page.locator("#tile-2 .face__line")).hasText(before);
        assertThat(board.state(id).get("room").get("fit").textValue()).isEmpty();
    }

    /** 32 F are 0 C and 212 F are 100 C, exactly: 97.7 F are 36.5 C. */
    @Test void fahrenheit_is_a_setting_of_this_browser_and_is_turned_into_celsius_exactly() {
        String id = evening();
        page.locator("#table [data-open-seat='1']").click();
        page.locator("#sheet-body [data-degrees-toggle]").click();
        assertThat(page.locator("#sheet-body [data-degree-sign]")).hasText("°F");
        page.locator("#sheet-celsius").fill("97.7");
        assertThat(page.locator("[data-echo-of='sheet-celsius']")).hasText("= 36.5 °C");
        page.locator("#sheet-reading").click();

        assertThat(page.locator("#fit")).containsText("Room refitted");
        JsonNode last = lastEvent(id);
        assertThat(last.get("type").textValue()).isEqualTo("read-temperature");
        assertThat(last.get("celsius").doubleValue()).isEqualTo(36.5);
        page.reload();
        page.locator("#table [data-open-seat='2']").click();
        assertThat(page.locator("#sheet-body [data-degree-sign]")).hasText("°F");
    }

    private JsonNode lastEvent(String id) {
        String lines = board.get("/api/classes/" + id + "/events").body().strip();
        try {
            return benchpace.files.Json.read(lines.substring(lines.lastIndexOf('\n') + 1));
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test void a_reading_that_cannot_be_is_refused_with_the_reason() {
        evening();
        page.locator("#table [data-open-seat='1']").click();
        page.locator("#sheet-celsius").fill("130");
        page.locator("#sheet-reading").click();

        assertThat(page.locator("#messages")).containsText(Pattern.compile("130 °C .* cannot be right here"));
    }

    @Test void the_room_and_the_pour_are_noted_for_the_class() {
        String id = evening();
        page.locator("#warmth-button").click();
        page.locator("#room-celsius").fill("18.5");
        page.locator("#room-note").click();
        page.locator("#warmth-button").click();

        assertThat(page.locator("#warmth")).containsText("18.5 °C");
        assertThat(page.locator("#fit")).containsText("Recomputed from the room's thermometer");
        assertThat(board.state(id).get("room").get("roomCelsius").asDouble()).isEqualTo(18.5);
    }

    @Test void another_candle_is_chosen_on_the_sheet() {
        String id = evening();
        page.locator("#table [data-open-seat='2']").click();
        page.locator("#sheet-kind").selectOption("tin-paraffin");
        page.locator("#sheet-choose").click();

        assertThat(page.locator("#sheet-body .cut__picture title")).containsText("Paraffin blend in a tin");
        assertThat(board.seat(id, 2).get("candle").textValue()).isEqualTo("tin-paraffin");
    }

    @Test void sheet_and_room_panel_pass_the_accessibility_rules() {
        evening();
        page.locator("#table [data-open-seat='1']").click();
        page.waitForSelector("#sheet-reading");
        noViolations();
        page.keyboard().press("Escape");
        page.locator("#warmth-button").click();
        noViolations();
    }

    @Test void on_a_phone_the_page_of_vessels_stacks_and_needs_no_scrolling_sideways() {
        page.setViewportSize(390, 844);
        page.navigate(board.address() + "/cure");
        page.locator("#compute").click();
        page.waitForURL("**#results");

        for (int width : new int[] {390, 320}) {
            page.setViewportSize(width, 844);
            assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= innerWidth"
                    + " && [...document.querySelectorAll('.trial__scroll')]"
                    + ".every(e => e.scrollWidth <= e.clientWidth)"))
                    .as("fits into " + width).isTrue();
        }
        double table = page.locator(".ranges").boundingBox().width;
        assertThat(page.locator(".ranges__head").first()).isVisible();
        assertThat(page.locator(".curve").all().stream().map(c -> c.boundingBox().width))
                .as("one chart below the other").allMatch(w -> w >= table - 1);
        noViolations();
    }

    @Test void the_page_of_vessels_computes_from_its_form_and_passes_the_accessibility_rules() {
        page.navigate(board.address() + "/");
        page.locator("#cure-link").click();
        page.waitForSelector(".ranges");
        noViolations();
        page.locator("#a-fill").fill("60");
        page.locator("#compute").click();
        assertThat(page.locator(".ranges")).containsText("60 g of Soy container wax");
        page.locator("#a-fill").fill("900");
        page.locator("#compute").click();

        assertThat(page.locator("#a-fill-fault")).containsText("run over the brim");
        noViolations();
    }
}
