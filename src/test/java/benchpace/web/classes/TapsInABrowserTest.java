package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Device;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tap that was made is never lost, and counts once, whatever the network and the hands at the table do. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TapsInABrowserTest extends TapScreens {
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

    // ---- undo pressed again

    @Test void a_trembling_finger_undoes_once_and_sees_that_undo_rests_and_presses_one_by_one_each_take_one_back() {
        Device tablet = live(tablet(), table());
        for (int seat : new int[] {3, 4, 5}) {
            tablet.find("#tile-" + seat).click();
            assertThat(tablet.find("#undo-button")).containsText("seat " + seat + " done");
        }
        long before = seq();

        Object rests = tablet.page().evaluate("""
                () => { const press = () => document.getElementById('undo-button').click();
                  press();
                  press();
                  return getComputedStyle(document.getElementById('undo-button')).opacity; }""");
        assertThat(rests).as("seen to rest").isEqualTo("0.6");
        assertThat(tablet.find("#undo-button")).containsText("seat 4 done");
        tablet.page().waitForTimeout(400);
        assertThat(tablet.find("#undo-button")).hasCSS("opacity", "1");
        for (int press = 0; press < 2; press++) {
            tablet.find("#undo-button").click();
            tablet.page().waitForTimeout(500);
        }

        await().atMost(PATIENCE).untilAsserted(() -> assertThat(since(before, "type"))
                .containsExactly("undo", "undo", "undo"));
    }

    @Test void undo_rests_while_it_names_the_tap_that_was_taken_back_but_not_for_long() {
        Device tablet = live(tablet(), table());
        tablet.find("#tile-3").click();
        assertThat(tablet.find("#undo-button")).containsText("seat 3 done");

        Object rested = tablet.page().evaluate("""
                () => new Promise((done) => {
                  const hold = (event) => { event.preventDefault(); event.stopPropagation(); };
                  document.getElementById('undo').addEventListener('htmx:sseBeforeMessage', hold);
                  const pressed = performance.now();
                  new MutationObserver(() => document.body.dataset.rests || done(performance.now() - pressed))
                    .observe(document.body, { attributeFilter: ['data-rests'] });
                  document.getElementById('undo-button').click();
                })""");

        assertThat(((Number) rested).doubleValue()).isBetween(599.0, 5_000.0);
    }

    @Test void a_tap_taken_back_on_its_seat_right_after_undo_is_another_wish() {
        Device tablet = live(tablet(), table());
        for (int seat : new int[] {3, 4}) {
            tablet.find("#tile-" + seat).click();
            assertThat(tablet.find("#undo-button")).containsText("seat " + seat + " done");
        }
        tablet.find("#table [data-open-seat='3']").click();
        assertThat(tablet.find("#sheet-body .taps")).containsText("Take it back");
        long before = seq();

        tablet.page().evaluate("""
                () => { document.getElementById('undo-button').click();
                  document.querySelector('#sheet-body [data-command=undo]').click(); }""");

        await().atMost(PATIENCE).untilAsserted(() -> assertThat(since(before, "type"))
                .containsExactly("undo", "undo"));
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
        assertThat(other.locator("#now")).containsText("Welcome");
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
