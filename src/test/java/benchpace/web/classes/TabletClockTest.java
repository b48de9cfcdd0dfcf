package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.web.Device;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Route;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A tap counts at the time it was made, whatever becomes of the tablet's clock. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TabletClockTest extends TapScreens {
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

    private static Instant at(JsonNode event) {
        return Instant.parse(event.get("at").textValue());
    }

    private static boolean namesItsTime(Route route) {
        return route.request().postData().contains("\"at\"");
    }

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

    @Test void the_hour_that_comes_twice_says_on_the_tablet_too_which_it_is() {
        Device tablet = live(tablet(), table());

        for (String[] shown : new String[][] {{"2026-10-25T00:45:00Z", "02:45 summer"},
                {"2026-10-25T01:25:00Z", "02:25 winter"}, {"2026-10-25T02:00:00Z", "03:00"},
                {"2027-03-28T01:00:00Z", "03:00"}}) {
            Object words = ask(tablet, "clock", "it.clockWords(new Date('" + shown[0] + "'))");
            assertThat(words).as(shown[0]).isEqualTo(shown[1]);
        }
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

    @Test void a_correction_to_a_time_that_cannot_be_is_refused_with_its_own_time_and_not_sent_again() {
        Device tablet = live(tablet().expectingRefusals(), table());
        long before = seq();
        AtomicInteger tries = new AtomicInteger();
        tablet.page().onRequest(request -> {
            if (request.url().endsWith("/commands")) {
                tries.incrementAndGet();
            }
        });

        ask(tablet, "taps", "it.send({ type: 'correct-time', seq: " + before + ", to: '2020-01-01T00:00:00Z' })");

        assertThat(tablet.find("#messages")).containsText("2020-01-01T00:00:00Z does not lie between");
        nothingWaits(tablet);
        assertThat(since(before)).isEmpty();
        assertThat(tries).hasValue(1);
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
}
