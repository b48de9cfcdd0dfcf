package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page that everybody comes to first: which classes stand where, and how one is set up. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StartPageTest {
    @TempDir Path data;
    private TestBoard board;
    private Browser browser;
    private Device device;

    @BeforeEach void open(Browser browser) {
        this.browser = browser;
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        if (device != null) {
            device.assertNoComplaint();
            device.close();
        }
        board.close();
    }

    /** @param days from now */
    private String made(String name, int days) {
        return board.create("{\"planId\":\"table-of-six\",\"name\":\"" + name + "\",\"startsAt\":\""
                + board.testClock().instant().plus(Duration.ofDays(days)) + "\"}");
    }

    private void closed(String name, int days) {
        board.tap(made(name, days), command("close")).ok();
    }

    private String page() {
        return board.get("/", board.instructor()).ok().body();
    }

    private static List<String> names(String html) {
        List<String> names = new ArrayList<>();
        Matcher name = Pattern.compile("<h4><bdi>(.*?)</bdi>").matcher(html);
        while (name.find()) {
            names.add(name.group(1));
        }
        return names;
    }

    // ---- classes

    @Test void running_classes_come_first_then_those_to_come_then_those_that_are_over_each_from_the_nearest_on() {
        closed("Long over", -20);
        made("In a month", 30);
        closed("Just over", -1);
        made("Tomorrow", 1);
        board.tap(made("Running", 0), opening("hello")).ok();

        assertThat(names(page())).containsExactly("Running", "Tomorrow", "In a month", "Just over", "Long over");
    }

    @Test void what_is_next_today_comes_before_what_is_later_and_what_was_never_begun_after_that() {
        board.tap(made("Left open", 0), opening("hello")).ok();
        board.testClock().advance(Duration.ofDays(3));
        made("Never begun", -2);
        made("In a month", 30);
        made("Tonight", 0);

        String page = page();

        assertThat(names(page)).containsExactly("Tonight", "In a month", "Never begun", "Left open");
        assertThat(page).contains("Next, today", "To come", "Not begun, or left open", "left open")
                .doesNotContain("Running now");
    }

    @Test void a_row_says_today_or_the_date_and_the_year_if_it_is_another() {
        made("Tonight", 0);
        made("Tomorrow", 1);
        made("Far away", 400);
        Times times = new Times(TestBoard.ZONE);
        Instant now = board.testClock().instant();

        assertThat(page()).contains("Today, " + times.clock(now), times.day(now.plus(Duration.ofDays(1))),
                times.date(now.plus(Duration.ofDays(400))) + " "
                        + now.plus(Duration.ofDays(400)).atZone(TestBoard.ZONE).getYear());
    }

    // ---- addresses and who joins

    @Test void the_addresses_that_stay_are_on_the_page_for_those_whom_they_open_to() {
        String wall = "http://127.0.0.1:" + board.port() + "/wall";
        assertThat(board.get("/", "").ok().body()).contains(wall).doesNotContain("/table", "/helper\"");
        assertThat(board.get("/", board.helper()).ok().body()).contains(wall, "/helper\"").doesNotContain("/table");
        assertThat(page()).contains(wall, "/helper\"", "/table\"");
    }

    @Test void the_helpers_pin_is_shown_to_the_instructor_alone() {
        assertThat(page()).contains(TestBoard.HELPER_PIN).doesNotContain(TestBoard.PIN);
        assertThat(board.get("/", board.helper()).body() + board.get("/", "").body())
                .doesNotContain(TestBoard.HELPER_PIN, board.helperKey());
    }

    @Test void a_helpers_link_pairs_the_phone_and_opens_the_helpers_page_of_the_class_that_runs() {
        board.tap(made("Running", 0), opening("hello")).ok();
        device = Device.phone(board, browser).expectingRefusals().at("/helper#helper=" + board.helperKey());
        assertThat(device.find("#link-dialog")).isVisible();
        assertThat(device.find("#pair-first")).hasText("Pairing this device…");
        assertThat(device.find(".card--pair")).isHidden();
        assertThat(helpers()).as("paired once, when they have answered").isEmpty();
        device.page().reload();
        assertThat(device.find("#link-dialog")).isVisible();
        device.find("#link-initials").fill("mo");

        device.find("#link-dialog [type=submit]").click();

        assertThat(device.find(".bar__title")).containsText("Running");
        assertThat(device.page()).hasURL(Pattern.compile(".*/helper$"));
        assertThat(helpers()).containsExactly("MO");
    }

    /** The initials of those who are paired. */
    private List<String> helpers() {
        return board.access().devices().stream().filter(d -> d.role().equals("helper")).map(d -> d.label()).toList();
    }

    @Test void a_phone_whose_answer_is_lost_is_told_so_and_tries_again_without_being_asked_again() {
        board.tap(made("Running", 0), opening("hello")).ok();
        device = Device.phone(board, browser).expectingRefusals().at("/helper#helper=" + board.helperKey());
        device.page().route("**/api/pair", route -> route.abort());
        device.find("#link-initials").fill("mo");
        device.find("#link-dialog [type=submit]").click();
        assertThat(device.find("#pair-first")).hasText("The board cannot be reached just now.");
        assertThat(device.find("#pair-form")).isVisible();
        device.page().unroute("**/api/pair");

        device.find("#pair-again button").click();

        assertThat(device.find(".bar__title")).containsText("Running");
        assertThat(helpers()).containsExactly("MO");
    }

    @Test void a_phone_whose_holder_does_not_say_who_they_are_is_not_paired_and_can_be_asked_again() {
        board.tap(made("Running", 0), opening("hello")).ok();
        device = Device.phone(board, browser).expectingRefusals().at("/helper#helper=" + board.helperKey());
        assertThat(device.find("#link-dialog")).isVisible();
        device.page().keyboard().press("Escape");
        assertThat(device.find("#pair-first")).hasText("This device is paired once you say who you are.");
        assertThat(helpers()).isEmpty();

        device.find("#pair-again button").click();

        assertThat(device.find("#link-dialog")).isVisible();
    }

    @Test void a_helpers_link_that_is_not_right_asks_nobody_who_they_are_and_shows_how_to_pair() {
        board.tap(made("Running", 0), opening("hello")).ok();
        device = Device.phone(board, browser).expectingRefusals().at("/helper#helper=0123456789abcdef");

        assertThat(device.find("#pair-first")).containsText("not right");
        assertThat(device.find("#pair-again")).isHidden();
        assertThat(device.find("#link-dialog")).isHidden();
        assertThat(device.find("#pair-form")).isVisible();
    }

    @Test void a_class_that_is_over_leads_the_instructor_to_the_look_back_and_nobody_to_a_wait() {
        String id = made("Over", -1);
        board.tap(id, command("close")).ok();

        assertThat(page()).contains("/classes/" + id + "/report", "/classes/" + id + "/instructor")
                .doesNotContain("/classes/" + id + "/wait", "/classes/" + id + "/helper");
        assertThat(board.get("/", board.helper()).ok().body()).contains("/classes/" + id + "/wall")
                .doesNotContain("/classes/" + id + "/report");
    }

    @Test void a_few_closed_classes_stay_in_sight_and_more_are_folded_away() {
        made("Tomorrow", 1);
        for (int i = 1; i <= 3; i++) {
            closed("Old " + i, -i);
        }
        assertThat(page()).doesNotContain("<details");

        closed("Old 4", -4);

        String page = page();
        int fold = page.indexOf("<details");
        assertThat(page).contains("<summary>Closed classes (4)</summary>");
        assertThat(names(page.substring(0, fold))).containsExactly("Tomorrow");
        assertThat(names(page.substring(fold))).containsExactly("Old 1", "Old 2", "Old 3", "Old 4");
    }

    @Test void when_all_is_over_the_page_says_that_nothing_is_to_come() {
        for (int i = 1; i <= 4; i++) {
            closed("Old " + i, -i);
        }
        assertThat(page()).contains("No class is running or to come.", "Closed classes (4)");
    }

    @Test void a_closed_class_opens_from_the_fold() {
        for (int i = 1; i <= 4; i++) {
            closed("Old " + i, -i);
        }
        device = Device.phone(board, browser).at("/");
        Locator wall = device.find("[aria-label='Wall of Old 4']");
        assertThat(wall).isHidden();

        device.find("#closed-classes summary").click();

        assertThat(wall).isVisible();
        wall.click();
        device.page().waitForURL("**/wall");
    }

    // ---- setting up

    private void setUp(String names) {
        device = Device.tablet(board, browser).pairedBy(board.instructor()).at("/");
        device.find("#plan").selectOption("table-of-six");
        device.find("#class-names").fill(names);
    }

    private List<String> seated() {
        device.page().waitForURL("**/instructor");
        String id = device.page().url().replaceAll(".*/classes/([^/]+)/.*", "$1");
        List<String> names = new ArrayList<>();
        for (JsonNode seat : board.state(id).json().get("seats")) {
            names.add(seat.get("name").textValue());
        }
        return names;
    }

    @Test void names_are_pasted_one_a_line_and_an_empty_line_leaves_a_seat_without_one() {
        setUp("Ida\r\nTomasz\n\n  Bea \n\n");
        assertThat(device.find("#names-echo")).hasText("1 Ida, 2 Tomasz, 4 Bea");

        device.find("#set-up-form [type=submit]").click();

        assertThat(seated()).containsExactly("Ida", "Tomasz", "", "Bea", "", "");
    }

    @Test void names_are_typed_with_commas_between() {
        setUp("Ida, Tomasz,\nBea; Maud\tOlle");
        device.find("#set-up-form [type=submit]").click();

        assertThat(seated()).containsExactly("Ida", "Tomasz", "Bea", "Maud", "Olle", "");
    }

    @Test void a_class_needs_no_names() {
        setUp(" \n ");
        device.find("#set-up-form [type=submit]").click();

        assertThat(seated()).containsOnly("");
    }

    @Test void names_that_do_not_fit_are_told_in_plain_words_and_stay_in_the_form() {
        setUp("a\nb\nc\nd\ne\nf\ng");
        device.expectingRefusals();
        Locator answer = device.find("#set-up-answer");

        device.find("#set-up-form [type=submit]").click();
        assertThat(answer).hasText("The names reach to seat 7, but there are 6 seats. Add seats or leave names out.");

        device.find("#class-names").fill("Ida\n" + "x".repeat(41));
        device.find("#set-up-form [type=submit]").click();
        assertThat(answer).containsText("The name for seat 2 is too long");
        assertThat(device.find("#class-names")).hasValue("Ida\n" + "x".repeat(41));
        assertThat(board.boards().all()).isEmpty();
    }

    @Test void no_start_page_needs_scrolling_sideways_on_a_phone() {
        for (int i = 1; i <= 4; i++) {
            closed("Old table with a name as long as names of classes get, and a little longer " + i, -i);
        }
        board.evening();
        for (String token : List.of("", board.helper(), board.instructor())) {
            try (Device phone = Device.phone(board, browser)) {
                (token.isEmpty() ? phone : phone.pairedBy(token)).at("/").find("#closed-classes summary").click();

                assertThat((Boolean) phone.page().evaluate("document.documentElement.scrollWidth <= innerWidth"))
                        .isTrue();
            }
        }
    }
}
