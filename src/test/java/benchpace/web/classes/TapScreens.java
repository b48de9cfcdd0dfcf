package benchpace.web.classes;

import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import benchpace.web.request.Problem;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.regex.Pattern;

/** A class in its first step, seen in a real Chromium, whose taps are held up, refused or counted on the way. */
public abstract class TapScreens extends LiveScreens {
    public static final Duration PATIENCE = Duration.ofSeconds(30);
    public static final Pattern FINISHED = Pattern.compile("face--waiting\\b");

    @Override protected void begin() {
        board = new TestBoard(data, InstantSource.system(), StreamLimits.USUAL);
        id = board.evening();
        board.tap(id, opening("welcome")).ok();
    }

    Device device(Device device, String token) {
        return here(device).pairedBy(token);
    }

    Device tablet() {
        return device(Device.tablet(board, browser), board.instructor());
    }

    String table() {
        return "/classes/" + id + "/instructor";
    }

    /** Open, live, and sure of the board's time. */
    Device live(Device device, String path) {
        device.at(path);
        assertThat(device.find("#now")).containsText("Welcome");
        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) ask(device, "clock", "it.sure()"));
        return device;
    }

    static Object ask(Device device, String module, String what) {
        return device.page().evaluate("import('/static/js/" + module + ".js').then((it) => " + what + ")");
    }

    static void nothingWaits(Device tablet) {
        await().atMost(PATIENCE).pollInSameThread().until(() -> ask(tablet, "taps", "it.kept().length").equals(0));
    }

    static Locator face(Page page, int seat) {
        return page.locator("#tile-" + seat + " .face:not(.face--unsent)");
    }

    static Locator sent(Page page, int seat) {
        return page.locator("[data-place='" + seat + "'] [data-sent]");
    }

    static void refuse(Route route, int status, String code) {
        route.fulfill(new Route.FulfillOptions().setStatus(status).setContentType(Problem.MEDIA_TYPE)
                .setBody("{\"type\":\"urn:benchpace:" + code + "\",\"title\":\"No\",\"detail\":\"No, not so.\"}"));
    }

    long seq() {
        return board.state(id).seq();
    }

    /** What the board recorded after an event, in its order. */
    List<JsonNode> since(long seq) {
        return board.get("/api/classes/" + id + "/events?after=" + seq, board.instructor()).body().lines()
                .filter(line -> !line.isBlank()).map(TapScreens::parsed).toList();
    }

    private static JsonNode parsed(String line) {
        try {
            return Json.read(line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> since(long seq, String field) {
        return since(seq).stream().map(e -> e.get(field).asText()).toList();
    }
}
