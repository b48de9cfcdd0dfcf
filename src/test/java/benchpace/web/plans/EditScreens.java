package benchpace.web.plans;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Browsers;
import benchpace.web.TestBoard;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A board with plans, and a browser that edits them. */
@ExtendWith(Browsers.class)
abstract class EditScreens {
    private static final Path KIT = Path.of("src/test/resources/benchpace/web/plans/kit.json");

    @TempDir
    private Path data;
    TestBoard board;
    private Browser browser;
    private BrowserContext context;

    @BeforeEach void open(Browser shared) {
        browser = shared;
        board = TestBoard.open(data);
        context = context(1280, 800, ColorScheme.LIGHT);
    }

    @AfterEach void close() {
        context.close();
        board.close();
    }

    final BrowserContext context(int width, int height, ColorScheme colours) {
        BrowserContext made = browser.newContext(new Browser.NewContextOptions().setViewportSize(width, height)
                .setColorScheme(colours));
        made.addCookies(List.of(new Cookie("benchpace", board.instructor()).setUrl(board.uri("").toString())));
        return made;
    }

    static ObjectNode kit() {
        try {
            return (ObjectNode) Json.read(Files.readString(KIT));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    final String add(JsonNode plan) {
        return board.post("/api/plans", Json.text(plan), board.instructor()).ok().text("id");
    }

    /** The least that is a plan. */
    final String bare() {
        ObjectNode plan = Json.object().put("id", "first").put("name", "First plan").put("seats", 4)
                .put("table", "long-table");
        plan.putArray("steps").addObject().put("id", "try").put("name", "Try it").put("kind", "hands-on")
                .put("minutes", 10);
        return add(plan);
    }

    final JsonNode saved(String id) {
        return board.get("/api/plans/" + id, board.instructor()).ok().json();
    }

    final Page page(String id) {
        return page(context, id);
    }

    final Page page(BrowserContext of, String id) {
        Page page = of.newPage();
        page.navigate(board.uri("/plans/" + id).toString());
        page.waitForSelector("#preview-parts table");
        return page;
    }

    static Locator row(Page page, String list, int n) {
        return page.locator("#" + list + " .edit-row").nth(n - 1);
    }

    static Locator field(Locator part, String at) {
        return part.locator("[data-at='" + at + "']");
    }

    static Locator input(Locator part, String at) {
        return field(part, at).locator("input, select, textarea").first();
    }

    static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations().stream().map(v -> v.getId() + " " + v.getNodes()
                .stream().map(n -> n.getTarget().toString()).toList()).toList()).isEmpty();
    }

    static void save(Page page) {
        page.locator("#edit-save").click();
    }
}
