package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A tap that could not be sent is taken back by undo like any other, whatever has become of it on its way. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnsentTapsInABrowserTest extends TapScreens {
    /** Seat 3 is done, and the board knows it. */
    private Device seatThreeDone() {
        Device tablet = live(tablet(), table());
        tablet.find("#tile-3").click();
        assertThat(face(tablet.page(), 3)).hasClass(FINISHED);
        assertThat(tablet.find("#undo-button")).containsText("seat 3 done with");
        return tablet;
    }

    private void tapUnsent(Page page, int seat) {
        page.locator("#tile-" + seat).click();
        assertThat(page.locator("#undo-unsent")).containsText(Pattern.compile("seat " + seat + " .+, not sent yet"));
        assertThat(page.locator("#undo-button")).isHidden();
        assertThat(sent(page, seat)).hasText("not sent yet");
    }

    @Test void an_undo_while_the_network_is_away_takes_back_the_tap_that_was_not_sent_and_nothing_else() {
        Device tablet = seatThreeDone();
        long before = seq();
        tablet.offline(true);
        tapUnsent(tablet.page(), 4);

        tablet.find("#undo-unsent").click();

        assertThat(tablet.find("#messages")).containsText(Pattern.compile("Seat 4 .+: taken back; it was not sent"));
        assertThat(tablet.find("[data-place='4']")).not().hasClass(Pattern.compile("is-pressed|is-unsent"));
        assertThat(sent(tablet.page(), 4)).hasText("");
        assertThat(tablet.find("#undo-unsent")).isHidden();
        assertThat(tablet.find("#undo-button")).containsText("seat 3 done with");
        assertThat(tablet.find("#status-words")).not().containsText("not sent yet");
        nothingWaits(tablet);

        tablet.offline(false);
        tablet.find("#tile-5").click();
        assertThat(face(tablet.page(), 5)).hasClass(FINISHED);
        assertThat(face(tablet.page(), 3)).hasClass(FINISHED);
        assertThat(face(tablet.page(), 4)).not().hasClass(FINISHED);
        assertThat(since(before, "seat")).containsExactly("5");
    }

    @Test void undone_one_after_the_other_the_last_tap_goes_first_and_what_is_left_is_sent() {
        Device tablet = seatThreeDone();
        long before = seq();
        tablet.offline(true);
        for (int seat : new int[] {2, 6, 7}) {
            tapUnsent(tablet.page(), seat);
        }

        tablet.find("#undo-unsent").click();
        assertThat(tablet.find("#undo-unsent")).containsText("seat 6 done");
        assertThat(tablet.find("#status-words")).containsText("2 taps not sent yet");
        tablet.page().waitForTimeout(700); // a second wish, not a trembling finger
        tablet.page().keyboard().press("u");
        assertThat(tablet.find("#undo-unsent")).containsText("seat 2 done");
        tablet.offline(false);

        assertThat(face(tablet.page(), 2)).hasClass(FINISHED);
        nothingWaits(tablet);
        assertThat(since(before, "seat")).containsExactly("2");
    }

    @Test void a_tap_that_was_taken_back_can_be_made_again() {
        Device tablet = seatThreeDone();
        long before = seq();
        tablet.offline(true);
        tapUnsent(tablet.page(), 4);
        tablet.find("#undo-unsent").click();
        assertThat(sent(tablet.page(), 4)).hasText("");

        tapUnsent(tablet.page(), 4);
        tablet.offline(false);

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        assertThat(since(before, "seat")).containsExactly("4");
    }

    @Test void an_undo_with_nothing_unsent_is_kept_while_the_network_is_away_and_not_called_off_by_a_second_one() {
        Device tablet = seatThreeDone();
        long before = seq();
        tablet.offline(true);

        tablet.find("#undo-button").click();
        assertThat(tablet.find("#undo-unsent")).isDisabled();
        assertThat(tablet.find("#undo-unsent")).containsText("not sent yet");
        tablet.page().waitForTimeout(700); // a second wish, not a trembling finger
        tablet.page().keyboard().press("u");
        assertThat(since(before)).isEmpty();
        tablet.offline(false);

        assertThat(face(tablet.page(), 3)).not().hasClass(FINISHED);
        assertThat(tablet.find("#undo-unsent")).isHidden();
        nothingWaits(tablet);
        assertThat(since(before)).hasSize(1);
        assertThat(since(before, "seq")).hasSize(1);
    }

    @Test void a_tap_whose_answer_was_lost_is_undone_at_the_board_too() {
        Device tablet = seatThreeDone();
        long before = seq();
        AtomicInteger tries = new AtomicInteger();
        tablet.page().route("**/commands", route -> {
            switch (tries.getAndIncrement()) {
                case 0 -> {
                    route.fetch();
                    route.abort();
                }
                case 1, 2 -> route.abort();
                default -> route.resume();
            }
        });
        tablet.find("#tile-4").click();
        assertThat(tablet.find("#undo-unsent")).containsText("seat 4 done");

        tablet.find("#undo-unsent").click();

        assertThat(tablet.find("#messages")).containsText("should the board have it, it is undone there");
        nothingWaits(tablet);
        assertThat(since(before)).hasSize(2);
        assertThat(face(tablet.page(), 3)).hasClass(FINISHED);
        assertThat(face(tablet.page(), 4)).not().hasClass(FINISHED);
        assertThat(tablet.find("#undo-button")).containsText("seat 3 done with");
    }

    @Test void a_tap_that_is_on_its_way_is_undone_once_the_board_has_answered_it() {
        Device tablet = seatThreeDone();
        long before = seq();
        AtomicReference<Route> held = new AtomicReference<>();
        tablet.page().route("**/commands", route -> {
            if (!held.compareAndSet(null, route)) {
                route.resume();
            }
        });
        tapUnsent(tablet.page(), 4);

        tablet.find("#undo-unsent").click();
        assertThat(tablet.find("#status-words")).containsText("Undo not sent yet");
        held.get().resume();

        nothingWaits(tablet);
        assertThat(since(before)).hasSize(2);
        assertThat(face(tablet.page(), 3)).hasClass(FINISHED);
        assertThat(face(tablet.page(), 4)).not().hasClass(FINISHED);
        assertThat(tablet.find("#status-words")).hasText("");
    }

    @Test void what_the_undo_means_stays_to_be_read_beside_the_word_that_taps_wait() {
        Device tablet = seatThreeDone();
        tablet.offline(true);
        tapUnsent(tablet.page(), 4);
        assertThat(tablet.find("#status-words")).containsText("1 tap not sent yet");
        ask(tablet, "status", "it.say('stream', 'Not live: trying again.')");

        assertThat(tablet.find("#undo-unsent-words")).isVisible();
        Object cut = tablet.page().evaluate("""
                () => [document.querySelector('#undo-unsent > span'), document.getElementById('status')]
                  .some((it) => it.scrollWidth > it.clientWidth + 1 || it.scrollHeight > it.clientHeight + 1)
                """);
        assertThat(cut).as("words that are cut off").isEqualTo(false);
        assertThat((Boolean) tablet.page().evaluate("document.documentElement.scrollWidth <= innerWidth")).isTrue();
    }

    @Test void what_is_tapped_and_not_sent_is_said_beside_the_count_and_before_anybody_is_left_behind() {
        Device tablet = seatThreeDone();
        tablet.offline(true);
        tapUnsent(tablet.page(), 4);
        tapUnsent(tablet.page(), 5);

        assertThat(tablet.find(".middle__count")).containsText("1 of 8 done +2 not sent yet");
        assertThat(tablet.find("#next-button")).containsText("2 done, not sent yet");
        tablet.find("#next-button").click();
        assertThat(tablet.find("[data-unsent-seat='4']")).hasText("done, not sent yet");
        assertThat(tablet.find("[data-unsent-seat='6']")).hasText("");
        tablet.find("#ask-wait").click();
        tablet.find("#undo-unsent").click();
        assertThat(tablet.find(".middle__count")).containsText("1 of 8 done +1 not sent yet");
        tablet.offline(false);

        assertThat(tablet.find(".middle__count")).hasText("2 of 8 done");
        assertThat(tablet.find("#next-button")).not().containsText("not sent yet");
    }

    @Test void a_question_that_opens_without_a_network_names_at_once_what_was_tapped_and_not_sent() {
        Device tablet = seatThreeDone();
        board.tap(id, TestBoard.finish(2, "vessel")).ok(); // the question is another and waits until it is opened
        assertThat(face(tablet.page(), 2)).hasClass(FINISHED);
        tablet.offline(true);
        tapUnsent(tablet.page(), 4);

        assertThat(tablet.page().evaluate("""
                () => {
                  document.getElementById('next-button').click();
                  return ['4', '6'].map((seat) => document.querySelector(`[data-unsent-seat="${seat}"]`).textContent);
                }""")).isEqualTo(List.of("done, not sent yet", ""));
    }

    @Test void a_tile_that_is_drawn_anew_while_its_tap_waits_shows_the_tap_all_the_while() {
        Device tablet = live(tablet().withScript("""
                window.EventSource = class extends EventSource {
                  constructor(...of) { super(...of); window.stream = this; }
                };"""), table());
        tablet.page().route("**/commands", Route::abort);
        tablet.find("#tile-4").click();
        assertThat(tablet.find("#tile-4 > .face--unsent")).isVisible();

        assertThat(tablet.page().evaluate("""
                () => {
                  const tile = document.getElementById('tile-4');
                  const data = `${tile.querySelector(':scope > .face:not(.face--unsent)').outerHTML}<i id="anew"></i>`;
                  window.stream.dispatchEvent(new MessageEvent('seat-4', { data }));
                  return ['#anew', ':scope > .face--unsent'].map((one) => tile.querySelectorAll(one).length);
                }""")).isEqualTo(List.of(1, 1));
    }

    @Test void either_page_of_a_browser_takes_back_what_the_other_could_not_send() {
        Device tablet = seatThreeDone();
        Page other = tablet.page().context().newPage();
        other.navigate(tablet.page().url());
        assertThat(face(other, 3)).hasClass(FINISHED);
        long before = seq();
        tablet.offline(true);
        tapUnsent(tablet.page(), 6);
        assertThat(sent(other, 6)).containsText("not sent yet");

        other.locator("#undo-unsent").click();

        assertThat(tablet.find("#undo-unsent")).isHidden();
        assertThat(sent(tablet.page(), 6)).hasText("");
        tablet.offline(false);
        tablet.find("#tile-2").click();
        assertThat(face(tablet.page(), 2)).hasClass(FINISHED);
        nothingWaits(tablet);
        assertThat(since(before, "seat")).containsExactly("2");
    }
}
