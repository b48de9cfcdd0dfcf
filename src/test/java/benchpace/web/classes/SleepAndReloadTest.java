package benchpace.web.classes;

import static benchpace.web.TestBoard.finish;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import benchpace.web.Device;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A tablet that slept, that was loaded again without a network, and that was closed with taps unsent. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SleepAndReloadTest extends TapScreens {
    /** How long everything but the board has slept. */
    private final AtomicReference<Duration> slept = new AtomicReference<>(Duration.ZERO);

    @Override protected void begin() {
        board = new TestBoard(data, () -> Instant.now().plus(slept.get()), StreamLimits.USUAL);
        id = board.evening();
        board.tap(id, TestBoard.opening("welcome")).ok();
    }

    @Test void after_a_sleep_the_first_tap_counts_only_if_the_tile_still_means_it() {
        Device tablet = live(tablet().withScript("""
                window.EventSource = class extends EventSource {
                  constructor(...of) { super(...of); window.stream = this; }
                };"""), table());
        Page page = tablet.page();
        Object before = page.locator("#tile-4").innerHTML();
        board.tap(id, finish(4, "vessel")).ok();
        assertThat(face(page, 4)).hasClass(FINISHED);
        long seq = seq();
        // the glass as it stood before the sleep, and a minute in which nothing ran
        page.evaluate("""
                (html) => {
                  window.stream.dispatchEvent(new MessageEvent('seat-4', { data: html }));
                  const real = Date.now;
                  Date.now = () => real() + 60_000;
                }""", before);

        page.locator("#tile-4").click();

        assertThat(page.locator(".message")).containsText("Seat 4 had moved on");
        assertThat(since(seq)).isEmpty();
    }

    @Test void after_a_sleep_the_first_tap_is_written_down_with_the_time_after_it() {
        Device tablet = live(tablet(), table());
        long seq = seq();
        slept.set(Duration.ofMinutes(4));

        tablet.page().evaluate("const real = Date.now; Date.now = () => real() + 240_000; "
                + "document.getElementById('tile-4').click()");

        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(since(seq, "type")).containsExactly("finish-step"));
        assertThat(Instant.parse(since(seq, "at").get(0)))
                .isCloseTo(Instant.parse(since(seq, "recordedAt").get(0)), within(10, ChronoUnit.SECONDS));
    }

    @Test void after_a_sleep_a_button_that_the_stream_brought_anew_and_unchanged_still_counts() {
        Device tablet = live(tablet(), table());
        long seq = seq();
        tablet.page().locator("#next-button").click();

        tablet.page().evaluate("const real = Date.now; Date.now = () => real() + 60_000; "
                + "document.getElementById('ask-open').click()");

        await().atMost(PATIENCE).pollInSameThread().untilAsserted(
                () -> assertThat(since(seq, "type")).containsExactly("open-step"));
        assertThat(tablet.page().locator(".message")).hasCount(0);
    }

    @Test void while_it_is_not_live_a_page_that_is_not_kept_says_not_to_load_it_again() {
        Device tablet = live(tablet(), table());
        board.goAway();

        assertThat(tablet.find("#status-words")).containsText("Don't reload");

        board.comeBack();
        assertThat(tablet.find("#status-words")).not().containsText("Don't reload");
    }

    @Test void where_neither_lock_nor_film_keeps_a_screen_on_the_page_says_so_while_the_class_runs() {
        Device tablet = tablet().withScript("""
                Object.defineProperty(navigator, 'wakeLock', { value: undefined });
                HTMLMediaElement.prototype.play = () => Promise.reject(new Error('no films here'));""");
        live(tablet, table());

        assertThat(tablet.page().locator("#status-words")).containsText("may go dark");

        board.tap(id, TestBoard.command("close")).ok();
        assertThat(tablet.page().locator("#status-words")).not().containsText("may go dark");
    }

    @Test void where_no_lock_is_to_be_had_a_silent_film_plays_while_the_class_runs() {
        Device tablet = tablet().withScript("Object.defineProperty(navigator, 'wakeLock', { value: undefined })");
        live(tablet, table());

        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) tablet.page().evaluate(
                "(() => { const film = document.querySelector('.awake'); return Boolean(film) && !film.paused; })()"));
        board.tap(id, TestBoard.command("close")).ok();
        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) tablet.page().evaluate(
                "document.querySelector('.awake').paused"));
    }

    @Test void one_lock_is_asked_for_at_a_time_and_let_go_when_the_class_is_over() {
        Device tablet = tablet().withScript("""
                window.locks = [];
                window.held = () => window.locks.filter((lock) => !lock.released).length;
                const request = () => new Promise((done) => setTimeout(() => {
                  const lock = { released: false, release() { lock.released = true; } };
                  window.locks.push(lock);
                  done(lock);
                }, 300));
                Object.defineProperty(navigator, 'wakeLock', { value: { request } });""");
        live(tablet, table());
        Page page = tablet.page();
        page.waitForFunction("() => window.held() > 0");
        // as the browser does when the page is hidden; then it asks three times in one breath
        page.evaluate("window.locks.forEach((lock) => lock.release()); for (let i = 0; i < 3; i++) "
                + "document.dispatchEvent(new CustomEvent('board:stamp', { detail: 'state' }))");
        page.waitForFunction("() => window.held() > 0");

        board.tap(id, TestBoard.command("close")).ok();

        page.waitForFunction("() => window.held() === 0");
    }

    @Test void taps_of_a_page_that_was_closed_are_sent_from_the_start_page() {
        Device tablet = live(tablet(), table());
        long before = seq();
        tablet.offline(true);
        tablet.page().locator("#tile-4").click();
        assertThat(sent(tablet.page(), 4)).hasText("not sent yet");
        tablet.inAnotherTab().offline(false);

        tablet.at("/");

        assertThat(tablet.find(".message")).containsText("was sent");
        assertThat(since(before, "type")).containsExactly("finish-step");
    }

    @Test void a_page_that_is_kept_opens_again_without_a_network_with_its_taps() {
        Device tablet = here(Device.keeping(board, browser)).pairedBy(board.instructor());
        live(tablet, table());
        Page page = tablet.page();
        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) page.evaluate(
                "caches.open('benchpace-pages').then((c) => c.keys()).then((k) => k.length > 0)"));
        tablet.offline(true);
        page.locator("#tile-4").click();
        assertThat(sent(page, 4)).hasText("not sent yet");
        assertThat(page.locator("#status-words")).not().containsText("Don't reload");

        page.reload();

        assertThat(page.locator("#tile-4 .face--unsent")).isVisible();
        assertThat(page.locator("#status-words")).containsText("1 tap not sent yet");
        assertThat((Boolean) page.evaluate("caches.keys().then((all) => Promise.all(all.map((n) => caches.open(n).then("
                + "(c) => c.keys())))).then((k) => k.flat().some((r) => r.url.includes('/api/') || r.url.includes("
                + "'stream')))")).isFalse();
        tablet.offline(false);
        assertThat(page.locator(".face--unsent")).hasCount(0);

        page.evaluate("fetch('/api/unpair', { method: 'POST' })");
        await().atMost(PATIENCE).pollInSameThread().until(() -> (Boolean) page.evaluate(
                "caches.has('benchpace-pages').then((has) => !has)"));
    }
}
