package benchpace.web.guest;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Browser;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page behind a guest's code stays true by itself, with little load and through a lost network. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GuestPageRefreshTest {
    /** The page asks every ten seconds; here fifty times as often, and it may be told that nobody looks. */
    private static final String QUICKLY = "const timer = setInterval; window.turns = 0; "
            + "window.setInterval = (action) => timer(() => { window.turns += 1; action(); }, 200); "
            + "Object.defineProperty(document, 'hidden', { get: () => window.pocketed === true });";

    @TempDir Path data;
    private TestBoard board;
    private String id;
    private Device guest;
    private final AtomicInteger asked = new AtomicInteger();

    @BeforeEach void open(Browser browser) {
        board = TestBoard.open(data);
        id = board.evening();
        board.tap(id, command("guests-may-tell").put("on", true)).ok();
        board.tap(id, opening("wicks")).ok();
        String code = board.guestCode(id, 4);
        guest = Device.phone(board, browser).withScript(QUICKLY).at("/g/" + code);
        guest.page().onRequest(request -> asked.incrementAndGet());
    }

    @AfterEach void close() {
        guest.assertNoComplaint();
        guest.close();
        board.close();
    }

    private void awaitTurns() {
        guest.page().waitForFunction("turns => window.turns > turns + 3", guest.page().evaluate("window.turns"));
    }

    @Test void it_follows_the_step_and_says_when_the_class_is_over() {
        assertThat(guest.find(".guest__step")).hasText("Choose and wipe the glass");
        board.tap(id, finish(4, "vessel")).ok();
        assertThat(guest.find(".guest__step")).hasText("Set the wick");
        board.tap(id, finish(4, "wicks")).ok();
        assertThat(guest.find(".guest__step")).hasText("All done for now");

        board.tap(id, command("close")).ok();

        assertThat(guest.find(".guest__step")).hasText("Thank you for coming");
        assertThat(guest.find(".guest__words")).hasText("This class is over.");
    }

    @Test void without_a_network_it_keeps_what_it_shows_says_so_and_goes_on_once_it_is_back() {
        assertThat(guest.find("#guest-lost")).isHidden();
        guest.offline(true);
        board.tap(id, finish(4, "vessel")).ok();
        assertThat(guest.find("#guest-lost")).isVisible();
        assertThat(guest.find(".guest__step")).hasText("Choose and wipe the glass");

        guest.offline(false);

        assertThat(guest.find(".guest__step")).hasText("Set the wick");
        assertThat(guest.find("#guest-lost")).isHidden();
    }

    @Test void while_nobody_looks_it_asks_nothing_and_is_true_at_once_when_somebody_does() {
        guest.page().waitForCondition(() -> asked.get() > 0);
        guest.page().evaluate("window.pocketed = true");
        awaitTurns();  // an answer that was on its way
        int before = asked.get();
        board.tap(id, finish(4, "vessel")).ok();
        awaitTurns();

        assertThat(asked).hasValue(before);

        guest.page().evaluate("window.pocketed = false; document.dispatchEvent(new Event('visibilitychange'))");
        assertThat(guest.find(".guest__step")).hasText("Set the wick");
    }

    @Test void a_button_is_not_taken_from_under_the_finger() {
        var button = guest.find(".guest__button").boundingBox();
        guest.page().mouse().move(button.x + button.width / 2, button.y + button.height / 2);
        guest.page().mouse().down();
        board.tap(id, finish(4, "vessel")).ok();
        int before = asked.get();
        guest.page().waitForCondition(() -> asked.get() > before + 2);
        assertThat(guest.find(".guest__step")).hasText("Choose and wipe the glass");

        guest.page().mouse().up();

        assertThat(guest.find(".guest__step")).hasText("Set the wick");
    }
}
