package benchpace.web.data;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The two questions before guests are forgotten, answered with a finger and with keys alone, and the page beside. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForgettingInABrowserTest extends LiveScreens {
    private static final String NAME = "Quillonia";
    private static final String GONE = "The guests of this class are forgotten since";
    private final List<String> changes = new CopyOnWriteArrayList<>();

    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.create(Json.text(Json.object().put("planId", "evening-pour").put("seats", 4).put("name", "Thursday")
                .set("names", Json.object().arrayNode().add(NAME))));
        board.tap(id, TestBoard.command("close")).ok();
    }

    private Device tablet(String path) {
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.pair(Json.object().put("pin",
                TestBoard.PIN))).at(path);
        tablet.page().onRequest(request -> {
            if (!request.method().equals("GET")) {
                changes.add(request.method());
            }
        });
        return tablet;
    }

    private Device lookBack() {
        return tablet("/classes/" + id + "/report");
    }

    /** Sixty days after the class, so that it would be forgotten at once. */
    private Device dataPage() {
        board.testClock().advance(Duration.ofDays(60));
        return tablet("/data");
    }

    private boolean named() {
        return board.get("/api/classes/" + id, board.pair(Json.object().put("pin", TestBoard.PIN))).ok().body()
                .contains(NAME);
    }

    private static void press(Device device, String... keys) {
        for (String key : keys) {
            device.page().keyboard().press(key);
        }
    }

    // ---- one class, on its look back

    @Test void keeping_them_leaves_everything_as_it_was() {
        Device tablet = lookBack();
        Locator opener = tablet.find("[data-open=forget-dialog]");
        opener.click();
        assertThat(tablet.find("#forget-dialog")).isVisible();

        tablet.find("#forget-dialog [data-dismiss]").click();

        assertThat(tablet.find("#forget-dialog")).isHidden();
        assertThat(opener).isFocused();
        opener.click();
        press(tablet, "Escape");
        assertThat(tablet.find("#forget-dialog")).isHidden();
        assertThat(opener).isFocused();
        assertThat(changes).isEmpty();
        assertThat(named()).isTrue();
    }

    @Test void one_yes_forgets_them_and_the_page_says_since_when() {
        Device tablet = lookBack();
        tablet.find("[data-open=forget-dialog]").click();

        tablet.find("#forget").dblclick();

        assertThat(tablet.find("#guests")).containsText(GONE);
        assertThat(tablet.find("[data-open=forget-dialog]")).hasCount(0);
        assertThat(tablet.page().content()).doesNotContain(NAME);
        assertThat(changes).containsExactly("POST");
        assertThat(named()).isFalse();
    }

    @Test void keys_alone_do_it_and_stay_where_it_was_done() {
        Device tablet = lookBack();
        tablet.find("[data-open=forget-dialog]").focus();
        press(tablet, "Enter");
        assertThat(tablet.find("#forget-dialog [data-dismiss]")).isFocused(); // nothing goes by a second Enter
        press(tablet, "Tab");
        assertThat(tablet.find("#forget")).isFocused();

        press(tablet, "Enter");

        assertThat(tablet.find("#guests")).containsText(GONE);
        assertThat(tablet.find("#guests-title")).isFocused();
        assertThat(tablet.find("#guests-title")).isInViewport();
    }

    @Test void a_page_that_still_asks_when_they_are_gone_changes_nothing_more() {
        Device tablet = lookBack();
        Device other = lookBack();
        other.find("[data-open=forget-dialog]").click();
        tablet.find("[data-open=forget-dialog]").click();
        tablet.find("#forget").click();
        assertThat(tablet.find("#guests")).containsText(GONE);
        Object since = board.boards().find(id).orElseThrow().forgotten();
        board.testClock().advanceMinutes(3);

        other.find("#forget").click();

        assertThat(other.find("#guests")).containsText(GONE);
        assertThat((Object) board.boards().find(id).orElseThrow().forgotten()).isEqualTo(since);
    }

    @Test void a_board_that_is_away_says_so_in_the_question_and_it_can_be_asked_again() {
        Device tablet = lookBack();
        tablet.find("[data-open=forget-dialog]").click();
        tablet.offline(true);
        tablet.find("#forget").click();
        assertThat(tablet.find("#forget-answer")).hasText("The board cannot be reached just now.");
        assertThat(tablet.find("#forget")).isFocused();
        tablet.offline(false);

        tablet.find("#forget").click();

        assertThat(tablet.find("#guests")).containsText(GONE);
    }

    // ---- so many days after each

    @Test void not_now_leaves_the_rule_and_the_names() {
        Device tablet = dataPage().expectingRefusals();
        Locator forget = tablet.find("#days-form [type=submit]");
        tablet.find("#days").fill("30");
        forget.click();
        assertThat(tablet.find("#days-ask")).containsText("\"Thursday\"");

        tablet.find("#days-dialog [data-dismiss]").click();

        assertThat(tablet.find("#days-dialog")).isHidden();
        assertThat(forget).isFocused();
        assertThat(tablet.find("#days")).hasValue("30");
        assertThat(tablet.find("#guests")).containsText("are kept until you forget them");
        board.erasing().look();
        assertThat(named()).isTrue();
    }

    @Test void a_yes_sets_the_days_and_forgets_who_is_due() {
        Device tablet = dataPage().expectingRefusals();
        tablet.find("#days").fill("30");
        tablet.find("#days-form [type=submit]").click();

        tablet.find("#days-dialog [data-yes]").dblclick();

        assertThat(tablet.find("#guests")).containsText("The guests of a class are forgotten 30 days after it.");
        board.erasing().look();
        assertThat(named()).isFalse();
        tablet.page().reload();
        assertThat(tablet.find("#guests")).containsText("The guests of 1 class are forgotten already.");
        assertThat(changes).containsExactly("PUT", "PUT"); // asked, then agreed to

        tablet.find("#days-form [type=submit]").click(); // nobody is due any more: nothing is asked
        assertThat(tablet.find("#guests")).containsText("The guests of a class are forgotten 30 days after it.");
        assertThat(tablet.find("#days-dialog")).isHidden();
    }

    @Test void keys_alone_choose_the_days_and_take_them_back() {
        Device tablet = dataPage().expectingRefusals();
        tablet.find("#days").fill("30");
        press(tablet, "Enter");
        assertThat(tablet.find("#days-dialog [data-dismiss]")).isFocused();
        press(tablet, "Tab", "Enter");

        assertThat(tablet.find("#guests")).containsText("are forgotten 30 days after it");
        assertThat(tablet.find("#guests-title")).isFocused();

        tablet.find("#days-off").focus();
        press(tablet, "Enter");
        assertThat(tablet.find("#guests")).containsText("are kept until you forget them");
        assertThat(tablet.find("#guests-title")).isFocused();
    }

    // ---- the page beside it, which has the same scripts

    @Test void the_page_of_a_file_to_help_us_opens_without_a_complaint_and_takes_the_file() {
        Device tablet = tablet("/data/problem");

        Download file = tablet.page().waitForDownload(() -> tablet.find(".problem [type=submit]").click());

        assertThat(file.suggestedFilename()).endsWith(".zip");
    }
}
