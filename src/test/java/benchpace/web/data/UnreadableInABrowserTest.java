package benchpace.web.data;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.deque.html.axecore.playwright.AxeBuilder;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Two classes that cannot be read, deleted on the page of the data with keys alone. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnreadableInABrowserTest extends LiveScreens {

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
        board.goAway();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("benchpace.db"));
                Statement statement = connection.createStatement()) {
            for (String odd : new String[] {"odd-1", "odd-2"}) {
                statement.executeUpdate("insert into event values ('" + odd + "', 1, 'c', 'create', 'x', 0, 0, "
                        + "'{\"plan\":3,\"seats\":[{\"seat\":1,\"name\":\"Ida\"}]}', '')");
            }
        } catch (SQLException e) {
            throw new AssertionError(e);
        }
        board.comeBack();
    }

    @Test void a_question_that_is_asked_again_as_it_closes_stays() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/data");
        tablet.find("[data-delete-class=odd-1]").click();
        tablet.page().evaluate("() => { document.getElementById('unreadable-dialog').close();"
                + " document.querySelector('[data-delete-class=odd-2]').click(); }");
        assertThat(tablet.find("#unreadable-dialog")).containsText("odd-2");

        tablet.find("#unreadable-dialog [data-yes]").click();

        assertThat(tablet.find("#unreadable")).containsText("One class cannot be read back.");
        assertThat(board.boards().unreadable()).containsExactly("odd-1");
    }

    @Test void each_goes_after_a_question_and_the_focus_stays_at_what_is_left() {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/data");
        assertThat(tablet.find("#unreadable")).containsText("2 classes cannot be read back.");
        assertThat(new AxeBuilder(tablet.page()).analyze().getViolations()).isEmpty();
        tablet.find("[data-delete-class=odd-1]").focus();
        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find("#unreadable-dialog")).containsText("odd-1");
        tablet.page().keyboard().press("Escape");
        assertThat(tablet.find("[data-delete-class=odd-1]")).isFocused();
        assertThat(board.boards().unreadable()).containsExactly("odd-1", "odd-2");

        tablet.page().keyboard().press("Enter");
        tablet.page().keyboard().press("Tab");
        tablet.page().keyboard().press("Enter");

        assertThat(tablet.find("#unreadable")).containsText("One class cannot be read back.");
        assertThat(tablet.find("#unreadable-title")).isFocused();
        assertThat(board.boards().unreadable()).containsExactly("odd-2");
        tablet.find("[data-delete-class=odd-2]").click();
        tablet.find("#unreadable-dialog [data-yes]").click();
        assertThat(tablet.find("#unreadable")).hasCount(0);
        assertThat(tablet.find("#guests-title")).isFocused();
        assertThat(board.boards().unreadable()).isEmpty();
        assertThat(board.boards().find(id)).as("a class that can be read").isPresent();
    }
}
