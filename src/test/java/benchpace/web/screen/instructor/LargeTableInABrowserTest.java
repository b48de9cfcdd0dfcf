package benchpace.web.screen.instructor;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Forty tiles stay where a quick finger found them, whatever the text above them comes to say. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LargeTableInABrowserTest extends LiveScreens {
    private static final int SEATS = 40;

    private static final String WHERE_TILES_ARE = """
            () => [...document.querySelectorAll('.place')].map(place => {
              const { x, y, width, height } = place.getBoundingClientRect();
              return `${place.dataset.place}: ${x} ${y} ${width} ${height}`;
            })""";

    /** Seats any part of whose tile an edge of the page, or of the part of it that scrolls, hides. */
    private static final String CUT_TILES = """
            () => {
              const room = document.querySelector('.room').getBoundingClientRect();
              const low = Math.min(innerHeight, room.bottom);
              return [...document.querySelectorAll('.place')].filter(place => {
                const { top, bottom } = place.getBoundingClientRect();
                return top < room.top || bottom > low;
              }).map(place => place.dataset.place);
            }""";

    /** Parts of the text above whose content is higher than they are. */
    private static final String CUT_WORDS = """
            () => [...document.querySelectorAll('#now, #help, #wait, #home, #fit, .lead')]
                .filter(part => part.scrollHeight > part.clientHeight + 1).map(part => part.id || part.className)""";

    /** Until what follows from the next tap is on the screen as well. */
    private static final String UNTIL_JUDGED = """
            () => {
              window.judged = false;
              document.addEventListener('board:stamp', ({ detail }) => { window.judged ||= detail === 'state'; });
            }""";

    private Object before;
    private Device tablet;

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.create("{\"planId\":\"evening-pour\",\"seats\":" + SEATS + ",\"startsAt\":\""
                + board.clock.instant() + "\"}");
    }

    private void open(String step, String heading) {
        board.tap(id, opening(step)).ok();
        assertThat(tablet.find("#now .now__heading")).hasText(heading);
        nothingMoved(heading);
    }

    /** All but the first few, who slip behind while the others go on; then these as well. */
    private void finished(String step) {
        board.testClock().advanceMinutes(2);
        for (int seat = 4; seat <= SEATS; seat++) {
            board.tap(id, finish(seat, step)).ok();
        }
        nothingMoved(step + ", most of them done");
        lookedRound(step + ", some behind");
        for (int seat = 1; seat < 4; seat++) {
            board.tap(id, finish(seat, step)).ok();
        }
        nothingMoved(step + " done");
    }

    /** Long after, all is judged anew. */
    private void lookedRound(String when) {
        board.testClock().advanceMinutes(12);
        tablet.page().evaluate(UNTIL_JUDGED);
        board.tap(id, command("note").put("text", "looked round")).ok();
        assertThat(tablet.find("#undo")).containsText("note");
        tablet.page().waitForFunction("() => window.judged");
        nothingMoved(when);
    }

    private void nothingMoved(String when) {
        assertThat(tablet.page().evaluate(WHERE_TILES_ARE)).as(when).isEqualTo(before);
        assertThat(tablet.page().evaluate(CUT_TILES)).as("cut: " + when).isEqualTo(List.of());
        assertThat(tablet.page().evaluate(CUT_WORDS)).as("words cut: " + when).isEqualTo(List.of());
    }

    @Test void no_tile_of_forty_moves_from_the_welcome_to_the_cure() {
        tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + id + "/instructor");
        tablet.page().waitForFunction("() => !document.getElementById('lines-box').open");
        before = tablet.page().evaluate(WHERE_TILES_ARE);

        for (int seat = 1; seat <= SEATS; seat++) {
            board.tap(id, command("arrive").put("seat", seat)).ok();
        }
        open("welcome", "Welcome");
        board.stuckAtWicks(id, 2);
        lookedRound("a seat is stuck");
        assertThat(tablet.find("#help .flag").first()).isVisible();
        nothingMoved("a seat is flagged");
        board.tap(id, finish(2, "wicks")).ok();
        open("fragrance", "Choose the fragrance");
        open("before-wax", "Before the wax");
        open("mix", "Weigh and stir");
        finished("mix");
        open("pour", "Pour");
        finished("pour");
        finished("centre");
        assertThat(tablet.find("#now .now__cure")).isVisible();
        assertThat(tablet.find("#wait .wait__item--first")).isVisible();
        nothingMoved("the cure");
    }

    @Test void a_question_above_all_that_takes_a_row_of_its_own_moves_no_tile() {
        tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor())
                .at("/classes/" + id + "/instructor");
        tablet.page().waitForFunction("() => !document.getElementById('lines-box').open");
        before = tablet.page().evaluate(WHERE_TILES_ARE);

        tablet.page().evaluate("""
                () => {
                  document.getElementById('guesses').innerHTML = '<p class="guesses__line">The room is guessed.</p>';
                }""");

        assertThat(tablet.find("#guesses p")).isVisible();
        assertThat(tablet.page().evaluate(WHERE_TILES_ARE)).isEqualTo(before);
    }
}
