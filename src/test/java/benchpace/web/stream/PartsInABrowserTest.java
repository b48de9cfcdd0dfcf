package benchpace.web.stream;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.TestBoard;
import benchpace.web.classes.TapScreens;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What comes down the stream costs a slow tablet no more than what is new of what somebody sees. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PartsInABrowserTest extends TapScreens {
    /** Notes the places whose inside changes from now on, and each time the board has shown a tap whole. */
    private static final String WATCH = """
            () => {
              window.touched = new Set();
              window.wholes = 0;
              for (const part of document.querySelectorAll('.place, [sse-swap]:not(.tile, #clocks, #guesses)')) {
                new MutationObserver(() => touched.add(part.dataset.place ?? part.id))
                  .observe(part, { childList: true, subtree: true });
              }
              document.addEventListener('board:stamp', ({ detail }) => { if (detail === 'state') wholes += 1; });
            }""";

    private static final String WHERE_TILES_ARE = """
            () => [...document.querySelectorAll('.place')].map(place => {
              const { x, y, width, height } = place.getBoundingClientRect();
              return `${place.dataset.place}: ${x} ${y} ${width} ${height}`;
            })""";

    private Device table() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + id + "/instructor");
        tablet.page().waitForFunction("() => document.body.dataset.stage");
        return tablet;
    }

    private static Device watched(Device tablet) {
        tablet.page().evaluate(WATCH);
        return tablet;
    }

    private static void shownWhole(Device tablet) {
        tablet.page().waitForFunction("() => window.wholes > 0");
        tablet.page().evaluate("() => { window.wholes = 0; }");
    }

    @SuppressWarnings("unchecked")
    private static List<String> touched(Device tablet) {
        return (List<String>) tablet.page().evaluate("() => [...window.touched]");
    }

    @Test void a_tap_elsewhere_touches_no_tile_but_its_own_though_all_are_sent_anew() {
        Device tablet = watched(table());

        board.restart();
        board.tap(id, finish(3, "vessel")).ok();
        assertThat(tablet.find("#tile-3 .face")).hasClass(FINISHED);
        shownWhole(tablet);

        assertThat(touched(tablet)).contains("3").doesNotContain("1", "2", "4", "5", "6", "7", "8");
    }

    /** What undo would take back and where seats are is said on two lines from then on; their place is kept before. */
    @Test void the_first_seat_that_goes_on_moves_no_tile_of_a_large_table() {
        String large = board.create("{\"planId\":\"evening-pour\",\"seats\":40,\"startsAt\":\"" + board.clock.instant()
                + "\"}");
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            board.tap(large, TestBoard.opening(step)).ok();
        }
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + large + "/instructor");
        tablet.page().waitForFunction("() => !document.getElementById('lines-box').open");
        Object before = tablet.page().evaluate(WHERE_TILES_ARE);

        board.tap(large, finish(1, "vessel")).ok();
        assertThat(tablet.find("#undo")).containsText("seat 1 done");
        assertThat(tablet.find("#now .now__done")).containsText("Seat 1 is at");

        assertThat(tablet.page().evaluate(WHERE_TILES_ARE)).isEqualTo(before);
    }

    @Test void the_answer_to_a_finger_is_on_its_tile_before_anything_else_is_done() {
        Device tablet = table();

        assertThat(tablet.page().evaluate("""
                async () => {
                  document.getElementById('tile-2').click();
                  for (let turn = 0; turn < 5; turn++) await undefined; // what only seems to come later
                  return [document.querySelector('[data-place="2"] [data-sent]').textContent,
                    document.querySelector('[data-place="2"]').classList.contains('is-pressed'),
                    Object.keys(localStorage).some((key) => key.startsWith('benchpace.tap.'))];
                }""")).isEqualTo(List.of("done", true, false));
        assertThat(tablet.find("#tile-2 .face")).hasClass(FINISHED);
    }

    @Test void no_mouse_is_made_of_a_finger_that_has_its_answer() {
        Device tablet = table();
        tablet.page().evaluate("""
                () => {
                  window.mouse = [];
                  for (const type of ['mousedown', 'click']) {
                    addEventListener(type, (event) => window.mouse.push(type + ' '
                        + event.target.closest('button').className), true);
                  }
                }""");

        BoundingBox tile = tablet.find("#tile-2").boundingBox();
        tablet.page().touchscreen().tap(tile.x + tile.width / 2, tile.y + tile.height / 2);
        assertThat(tablet.find("#tile-2 .face")).hasClass(FINISHED);
        BoundingBox more = tablet.find(".place__more[data-open-seat='3']").boundingBox();
        tablet.page().touchscreen().tap(more.x + more.width / 2, more.y + more.height / 2);
        assertThat(tablet.find("#seat-sheet")).isVisible();

        assertThat(tablet.page().evaluate("() => window.mouse"))
                .isEqualTo(List.of("mousedown place__more", "click place__more"));
    }

    @Test void a_part_that_comes_anew_hands_the_focus_on_to_what_is_in_its_place() {
        Device tablet = table();
        tablet.find("#next-button").focus();
        String before = tablet.find("#next-button").textContent();

        board.tap(id, finish(2, "vessel")).ok();
        assertThat(tablet.find("#next-button")).not().hasText(before);

        assertThat(tablet.page().evaluate("() => document.activeElement.id")).isEqualTo("next-button");
    }

    @Test void a_tap_whose_page_is_left_before_it_was_drawn_is_kept() {
        Device tablet = table();

        assertThat(tablet.page().evaluate("""
                async () => {
                  document.getElementById('tile-2').click();
                  window.dispatchEvent(new Event('pagehide'));
                  await undefined;
                  await undefined;
                  return Object.keys(localStorage).some((key) => key.startsWith('benchpace.tap.'));
                }""")).isEqualTo(true);
    }

    @Test void what_a_closed_dialogue_would_say_is_in_the_page_once_it_is_opened() {
        Device tablet = watched(table());

        board.tap(id, command("pause").put("seat", 3)).ok();
        shownWhole(tablet);
        assertThat(tablet.find("#next-ask > *")).hasCount(0);
        board.tap(id, finish(2, "vessel")).ok();
        shownWhole(tablet);
        assertThat(tablet.find("#next-ask > *")).hasCount(0);

        tablet.find("#next-button").click();
        assertThat(tablet.find("#next-dialog")).isVisible();
        int rows = tablet.find("#next-ask .left-behind li").count();
        assertThat(rows).isPositive();
        assertThat(tablet.find("#next-ask #ask-done-2")).hasCount(0);
        board.tap(id, finish(4, "vessel")).ok();
        assertThat(tablet.find("#next-ask .left-behind li")).hasCount(rows - 1);
    }

    @Test void folded_lines_are_drawn_once_they_are_unfolded() {
        Device tablet = table();
        if (tablet.page().evaluate("() => document.getElementById('lines-box').open").equals(true)) {
            tablet.find("#lines-box summary").click();
        }
        watched(tablet);

        board.tap(id, finish(3, "vessel")).ok();
        shownWhole(tablet);
        assertThat(tablet.find("#lines > *")).hasCount(0);

        tablet.find("#lines-box summary").click();
        assertThat(tablet.find("#lines .line")).hasCount(8);
    }

    @Test void a_stream_that_opens_again_leaves_alone_what_is_as_it_was() {
        Device tablet = watched(table());

        board.restart();
        assertThat(tablet.find("#status-words")).hasText(Pattern.compile("^$"));
        shownWhole(tablet);

        assertThat(touched(tablet)).doesNotContain("1", "2", "3", "help", "next-ask", "home");
    }
}
