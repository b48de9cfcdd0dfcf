package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import benchpace.web.Device;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What is asked on a tablet while somebody else goes on: no other question takes its place under a finger. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class QuestionsInABrowserTest extends TapScreens {

    private Device asked() {
        Device tablet = live(tablet(), table());
        tablet.find("#next-button").click();
        assertThat(tablet.find("#next-dialog")).isVisible();
        assertThat(tablet.find("#ask-open")).hasAttribute("data-step", "wicks");
        return tablet;
    }

    @Test void a_step_opened_elsewhere_is_asked_about_no_more() {
        Device tablet = asked();

        board.tap(id, opening("wicks")).ok();

        assertThat(tablet.find("#next-dialog")).isHidden();
        assertThat(tablet.page().getByText("The class has moved on: look at the next step again.")).isVisible();
    }

    @Test void a_question_stays_while_others_tick_and_says_so_when_nobody_is_left_behind() {
        Device tablet = asked();
        for (int seat = 1; seat <= 7; seat++) {
            board.tap(id, finish(seat, "vessel")).ok();
        }
        assertThat(tablet.find("#next-ask .left-behind li")).hasCount(1);
        assertThat(tablet.find("#ask-wait")).hasText("Wait for them");

        board.tap(id, finish(8, "vessel")).ok();

        assertThat(tablet.find("#next-ask .left-behind li")).hasCount(0);
        assertThat(tablet.find("#next-dialog")).isVisible();
        assertThat(tablet.find("#next-ask")).containsText("Nobody is left behind any more.");
        assertThat(tablet.find("#ask-wait")).hasText("Not yet");
    }

    @Test void one_press_that_ticks_more_than_the_step_a_seat_is_at_names_what_it_ticks() {
        Device tablet = live(tablet(), table());
        for (int seat = 2; seat <= 8; seat++) {
            board.tap(id, finish(seat, "vessel")).ok();
        }
        board.tap(id, opening("wicks")).ok();
        for (int seat = 3; seat <= 8; seat++) {
            board.tap(id, finish(seat, "wicks")).ok();
        }
        assertThat(tablet.find("#next-button")).hasAttribute("data-step", "fragrance");
        tablet.find("#next-button").click();

        assertThat(tablet.find("#ask-done-2")).hasText("It is done");
        assertThat(tablet.find("#ask-done-1")).hasText("Done up to Set the wick");
    }

    @Test void what_is_ticked_in_the_question_is_marked_on_its_tile_until_the_board_has_it() {
        Device tablet = asked();
        tablet.page().context().setOffline(true);

        tablet.find("#ask-done-3").click();

        assertThat(sent(tablet.page(), 3)).hasText("done");
        tablet.page().context().setOffline(false);
        assertThat(face(tablet.page(), 3)).hasClass(FINISHED);
        assertThat(sent(tablet.page(), 3)).hasText("");
    }

    @Test void a_class_closed_elsewhere_is_not_asked_to_be_closed() {
        Device tablet = live(tablet(), table());
        ask(tablet, "dialogue", "it.open('close-dialog')");
        assertThat(tablet.find("#close-dialog")).isVisible();

        board.tap(id, command("close")).ok();

        assertThat(tablet.find("#close-dialog")).isHidden();
        assertThat(tablet.page().getByText("This class was closed.")).isVisible();
    }
}
