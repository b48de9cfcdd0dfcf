package benchpace.web;

import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A tap that was made is never lost, and counts once, at the time it was made: whatever the tablet's clock, the network
 * and the hands at the table do.
 */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TapsInABrowserTest {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Pattern FINISHED = Pattern.compile("face--waiting\\b");
    /** Clocks that a test can move: the device's own, and the count of time that stands still in a sleep. */
    private static final String CLOCKS = """
            window.setForwardMs = 0; window.sleptMs = 0;
            const Real = Date;
            const count = performance.now.bind(performance);
            performance.now = () => 3_600_000 + count() - window.sleptMs;
            globalThis.Date = class extends Real {
              constructor(...given) { if (given.length) super(...given); else super(Real.now() + window.setForwardMs); }
              static now() { return Real.now() + window.setForwardMs; }
            };
            """;

    @TempDir Path data;
    private TestBoard board;
    private String id;
    private Browser browser;
    private final List<Device> devices = new ArrayList<>();

    @BeforeEach void open(Browser browser) {
        PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
        this.browser = browser;
        board = new TestBoard(data, InstantSource.system(), StreamLimits.USUAL);
        id = board.evening();
        board.tap(id, opening("welcome")).ok();
    }

    @AfterEach void close() {
        devices.forEach(Device::assertNoComplaint);
        devices.forEach(Device::assertStayedHere);
        devices.forEach(Device::close);
        board.close();
    }

    // ---- what the tests say

    private Device device(Device device, String token) {
        devices.add(device);
        return device.pairedBy(token);
    }

    private Device tablet() {
        return device(Device.tablet(board, browser), board.instructor());
    }

    private String table() {
        return "/classes/" + id + "/instructor";
    }

    /** Open, live, and sure of the board's time. */
    private Device live(Device device, String path) {
        device.at(path);
        assertThat(device.find("#now")).containsText("0 of 8");
        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) ask(device, "clock", "it.sure()"));
        return device;
    }

    private static Object ask(Device device, String module, String what) {
        return device.page().evaluate("import('/static/js/" + module + ".js').then((it) => " + what + ")");
    }

    private static Locator face(Page page, int seat) {
        return page.locator("#tile-" + seat + " .face");
    }

    private static Locator sent(Page page, int seat) {
        return page.locator("[data-place='" + seat + "'] [data-sent]");
    }

    private static boolean namesItsTime(Route route) {
        return route.request().postData().contains("\"at\"");
    }

    private static void refuse(Route route, int status, String code) {
        route.fulfill(new Route.FulfillOptions().setStatus(status).setContentType(Problem.MEDIA_TYPE)
                .setBody("{\"type\":\"urn:benchpace:" + code + "\",\"title\":\"No\",\"detail\":\"No, not so.\"}"));
    }

    private long seq() {
        return board.state(id).seq();
    }

    /** What the board recorded after an event, in its order. */
    private List<JsonNode> since(long seq) {
        return board.get("/api/classes/" + id + "/events?after=" + seq, board.instructor()).body().lines()
                .filter(line -> !line.isBlank()).map(TapsInABrowserTest::parsed).toList();
    }

    private static JsonNode parsed(String line) {
        try {
            return Json.read(line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> since(long seq, String field) {
        return since(seq).stream().map(e -> e.get(field).asText()).toList();
    }

    private static Instant at(JsonNode event) {
        return Instant.parse(event.get("at").textValue());
    }

    // ---- clocks

    @Test void a_tap_made_after_the_tablets_clock_was_set_keeps_its_time_however_late_it_arrives() {
        Device tablet = live(tablet().withScript(CLOCKS), table());
        long before = seq();
        AtomicInteger tries = new AtomicInteger();
        tablet.page().route("**/commands", route -> {
            if (tries.incrementAndGet() < 5) {
                route.abort();
            } else {
                route.resume();
            }
        });

        tablet.page().evaluate("window.setForwardMs = 30_000");
        assertThat(Instant.ofEpochMilli(((Number) ask(tablet, "clock", "it.now().getTime()")).longValue()))
                .isCloseTo(Instant.now(), within(3, ChronoUnit.SECONDS));
        tablet.find("#tile-4").click();
        Instant tapped = Instant.now();

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        JsonNode event = since(before).get(0);
        assertThat(at(event)).isCloseTo(tapped, within(4, ChronoUnit.SECONDS));
        assertThat(Instant.parse(event.get("recordedAt").textValue())).isAfter(tapped.plusSeconds(6));
    }

    @Test void a_tap_made_as_the_tablet_wakes_counts_from_now_and_not_from_before_the_sleep() {
        Device tablet = live(tablet().withScript(CLOCKS), table());
        long before = seq();

        tablet.page().evaluate("window.sleptMs = 300_000");
        Instant tapped = Instant.now();
        tablet.find("#tile-4").click();

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(at(since(before).get(0))).isBetween(tapped.minusSeconds(2), tapped.plusSeconds(15));
    }

    @Test void a_tap_whose_time_cannot_be_is_sent_once_more_without_it() {
        Device tablet = live(tablet().expectingRefusals(), table());
        long before = seq();
        AtomicInteger tries = new AtomicInteger();
        tablet.page().route("**/commands", route -> {
            tries.incrementAndGet();
            if (namesItsTime(route)) {
                refuse(route, 422, "outside-class");
            } else {
                route.resume();
            }
        });

        tablet.find("#tile-4").click();

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(tablet.find("#messages")).containsText("Seat 4: the tap counts from when it reached the board");
        assertThat(since(before)).hasSize(1);
        assertThat(tries).hasValue(2);
    }

    @Test void taps_keep_their_order_when_the_clock_is_set_back_between_two_visits() {
        Device tablet = live(tablet().withScript(CLOCKS), table());
        long before = seq();
        tablet.page().route("**/commands", Route::abort);
        tablet.page().evaluate("window.setForwardMs = 3_600_000");
        tablet.find("#tile-6").click();
        assertThat(sent(tablet.page(), 6)).containsText("not sent yet");

        live(tablet, table());
        tablet.find("#tile-2").click();
        assertThat(sent(tablet.page(), 2)).containsText("not sent yet");
        tablet.page().unroute("**/commands");

        assertThat(face(tablet.page(), 2)).hasClass(FINISHED);
        assertThat(face(tablet.page(), 6)).hasClass(FINISHED);
        assertThat(since(before, "seat")).containsExactly("6", "2");
    }

    // ---- hands

    private static JsonArray points(Device device, int... seats) {
        JsonArray points = new JsonArray();
        for (int seat : seats) {
            BoundingBox box = device.find("#tile-" + seat).boundingBox();
            JsonObject point = new JsonObject();
            point.addProperty("x", box.x + box.width / 2);
            point.addProperty("y", box.y + box.height / 2);
            point.addProperty("id", seat);
            points.add(point);
        }
        return points;
    }

    private static void touch(CDPSession fingers, String type, JsonArray points) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        fingers.send("Input.dispatchTouchEvent", event);
    }

    @Test void two_fingers_on_two_tiles_are_two_taps() {
        Device tablet = live(tablet(), table());
        CDPSession fingers = tablet.page().context().newCDPSession(tablet.page());
        JsonArray first = points(tablet, 2);
        JsonArray both = points(tablet, 2, 7);
        JsonArray second = points(tablet, 7);

        touch(fingers, "touchStart", first);
        touch(fingers, "touchStart", both);
        touch(fingers, "touchEnd", second);
        touch(fingers, "touchEnd", new JsonArray());

        assertThat(face(tablet.page(), 2)).hasClass(FINISHED);
        assertThat(face(tablet.page(), 7)).hasClass(FINISHED);
    }

    @Test void what_is_wished_again_after_its_opposite_is_not_the_same_wish() {
        Device tablet = live(tablet(), table());
        long before = seq();
        tablet.offline(true);

        Object waiting = ask(tablet, "taps", """
                { for (const type of ['pause', 'pause', 'resume', 'pause']) it.send({ type, seat: 3 });
                  for (const celsius of [19, 19]) it.send({ type: 'read-room', celsius });
                  return it.kept().map((tap) => tap.command.type).join(' '); }
                """.strip());
        assertThat(waiting).isEqualTo("pause resume pause read-room read-room");
        tablet.offline(false);

        assertThat(face(tablet.page(), 3)).hasClass(Pattern.compile("face--paused\\b"));
        await().atMost(PATIENCE).pollInSameThread().until(() -> ask(tablet, "taps", "it.kept().length").equals(0));
        assertThat(since(before, "type")).startsWith("pause", "resume", "pause").contains("read-room");
    }

    // ---- what answers, and how

    @Test void a_tap_that_the_helper_has_no_right_to_is_explained_and_holds_nothing_up() {
        Device phone = live(device(Device.phone(board, browser), board.helper()).expectingRefusals(),
                "/classes/" + id + "/helper");
        long before = seq();

        ask(phone, "taps", "{ it.send({ type: 'arrive', seat: 2 }); it.send({ type: 'pause', seat: 3 }); }");

        assertThat(phone.find("#messages")).containsText("Only the instructor may do that");
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(since(before, "type")).containsExactly("pause"));
        assertThat(phone.find("#status-words")).hasText("");
    }

    @Test void the_sign_in_page_of_a_network_takes_no_tap() {
        Device tablet = live(tablet().expectingRefusals(), table());
        long before = seq();
        AtomicInteger tries = new AtomicInteger();
        tablet.page().route("**/commands", route -> {
            switch (tries.getAndIncrement()) {
                case 0 -> route.fulfill(new Route.FulfillOptions().setStatus(200).setContentType("text/html")
                        .setBody("<title>Welcome to the house network</title>"));
                case 1 -> route.fulfill(new Route.FulfillOptions().setStatus(403).setContentType("text/html")
                        .setBody("<title>Sign in</title>"));
                default -> route.resume();
            }
        });

        tablet.find("#tile-4").click();

        assertThat(sent(tablet.page(), 4)).containsText("not sent yet");
        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(since(before)).hasSize(1);
        assertThat(tries).hasValue(3);
    }

    @Test void a_tap_is_not_led_elsewhere() {
        Device tablet = live(tablet(), table());
        long before = seq();
        AtomicInteger tries = new AtomicInteger();
        AtomicInteger led = new AtomicInteger();
        tablet.page().onRequest(request -> {
            if (request.url().endsWith("/sign-in")) {
                led.incrementAndGet();
            }
        });
        tablet.page().route("**/commands", route -> {
            if (tries.getAndIncrement() == 0) {
                route.fulfill(new Route.FulfillOptions().setStatus(307)
                        .setHeaders(Map.of("Location", "/sign-in")));
            } else {
                route.resume();
            }
        });

        tablet.find("#tile-4").click();

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(since(before)).hasSize(1);
        assertThat(led).hasValue(0);
    }

    @ParameterizedTest
    @CsvSource({"404, no-such-class, does not know this class", "421, foreign-host, address of this page"})
    void where_the_board_cannot_take_a_tap_it_is_kept_and_that_is_said(int status, String code, String words) {
        Device tablet = live(tablet().expectingRefusals(), table());
        tablet.page().route("**/commands", route -> refuse(route, status, code));

        tablet.find("#tile-4").click();
        assertThat(tablet.find("#status-words")).containsText(words);
        assertThat(tablet.find("#status-words")).containsText("1 tap not sent yet");
        tablet.page().unroute("**/commands");
        tablet.page().evaluate("window.dispatchEvent(new Event('online'))");

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(tablet.find("#status-words")).hasText("");
    }

    @Test void a_device_that_is_no_longer_paired_keeps_its_taps_until_it_is_again() {
        Device tablet = live(tablet().expectingRefusals(), table());
        long before = seq();
        tablet.page().context().clearCookies();

        tablet.find("#tile-4").click();
        assertThat(tablet.find("#status")).containsText("Pair this device again");
        assertThat(since(before)).isEmpty();
        tablet.pairedBy(board.instructor()).at(table());

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(since(before)).hasSize(1);
    }

    // ---- two pages of one browser

    @Test void two_pages_of_one_browser_send_every_tap_once_and_both_know() {
        Device tablet = live(tablet(), table());
        Page other = tablet.page().context().newPage();
        other.navigate(tablet.page().url());
        assertThat(other.locator("#now")).containsText("0 of 8");
        long before = seq();
        tablet.offline(true);

        tablet.find("#tile-6").click();
        assertThat(sent(other, 6)).containsText("not sent yet");
        other.locator("#tile-2").click();
        assertThat(sent(tablet.page(), 2)).containsText("not sent yet");
        tablet.find("#tile-7").click();
        assertThat(sent(other, 7)).containsText("not sent yet");
        tablet.offline(false);

        for (Page page : List.of(tablet.page(), other)) {
            for (int seat : new int[] {6, 2, 7}) {
                assertThat(face(page, seat)).hasClass(FINISHED);
            }
            assertThat(page.locator(".is-unsent")).hasCount(0);
            assertThat(page.locator("#status-words")).hasText("");
        }
        assertThat(since(before, "seat")).containsExactly("6", "2", "7");
    }
}
