package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.live.ClassEvent;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;
import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** {@code /wall}, {@code /helper} and {@code /table} show whatever class is on, whoever set it up since. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StayingAddressesTest {
    /** The page asks every ten seconds; here thirty times as often. */
    private static final String QUICKLY = "const timer = setInterval; "
            + "window.setInterval = (action, millis) => timer(action, millis === 10_000 ? 300 : millis);";
    private static final double PATIENCE_MILLIS = 20_000;

    @TempDir Path data;
    private TestBoard board;
    private Browser browser;
    private final List<Device> devices = new ArrayList<>();

    @BeforeEach void open(Browser browser) {
        this.browser = browser;
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        devices.forEach(Device::assertNoComplaint);
        devices.forEach(Device::close);
        board.close();
    }

    private Device here(Device device) {
        devices.add(device);
        return device.withScript(QUICKLY);
    }

    private String made(String name, Duration fromNow) {
        return board.create("{\"planId\":\"table-of-six\",\"name\":\"" + name + "\",\"startsAt\":\""
                + board.testClock().instant().plus(fromNow) + "\"}");
    }

    private String begun(String name) {
        String id = made(name, Duration.ZERO);
        board.tap(id, opening("hello")).ok();
        return id;
    }

    private String classAt(String address) {
        String page = board.get(address, board.instructor()).ok().body();
        return page.replaceAll("(?s).* data-class=\"([^\"]*)\".*", "$1");
    }

    private String mark() {
        return board.get("/api/shown", "").ok().json().get("mark").textValue();
    }

    private void assertShows(String id) {
        for (String address : List.of("/wall", "/helper", "/table")) {
            assertThat(classAt(address)).as(address).isEqualTo(id);
        }
    }

    private static LocatorAssertions.ContainsTextOptions patiently() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(PATIENCE_MILLIS);
    }

    // ---- which class

    @Test void the_class_that_runs_is_shown_and_not_the_one_to_come() {
        made("Later", Duration.ofHours(1));
        assertShows(begun("Now"));
    }

    @Test void while_none_runs_it_is_the_next_to_begin_today() {
        made("Later", Duration.ofHours(2));
        String next = made("Next", Duration.ofHours(1));
        made("In three days", Duration.ofDays(3));

        assertShows(next);
    }

    @Test void of_two_that_run_it_is_the_one_that_began_last_whichever_was_set_up_first() {
        String second = made("Set up first", Duration.ZERO);
        begun("Begun first");
        board.testClock().advanceMinutes(5);
        board.tap(second, opening("hello")).ok();

        assertShows(second);
        JsonNode told = board.get("/api/shown", "").ok().json();
        assertThat(told.get("running")).extracting(c -> c.get("name").textValue())
                .containsExactly("Set up first", "Begun first");
    }

    @Test void a_class_that_was_left_open_yesterday_does_not_keep_the_address() {
        begun("Forgotten");
        board.testClock().advance(Duration.ofHours(24));

        assertShows(made("Today's", Duration.ofMinutes(20)));
    }

    @Test void a_class_that_begins_by_itself_runs_from_its_time_on_however_long_before_it_was_set_up() {
        Plan plan = TestPlans.of(TestPlans.step("tin", StepKind.HANDS_ON, Opening.FREE, 10));
        String id = board.boards().create(plan, "Set up days before", board.testClock().instant()
                .plus(Duration.ofDays(2)), List.of(new ClassEvent.Place(new SeatNumber(1), "")), "test").id();
        board.testClock().advance(Duration.ofDays(2).plusMinutes(20));
        made("Later today", Duration.ofMinutes(5));

        assertShows(id);
    }

    @Test void a_class_that_was_only_tried_out_days_before_it_begins_does_not_keep_the_address() {
        board.tap(made("In three days", Duration.ofDays(3)), opening("hello")).ok();
        board.testClock().advance(Duration.ofDays(1));

        assertShows(made("Today's", Duration.ofMinutes(20)));
    }

    @Test void with_no_class_today_the_page_says_so_and_when_the_next_begins() {
        String over = begun("Early class");
        board.tap(over, command("close")).ok();
        assertThat(board.get("/table", board.instructor()).ok().body()).contains("No other class is set up.");
        made("In three days", Duration.ofDays(3));

        for (String address : List.of("/helper", "/table")) {
            assertThat(board.get(address, board.instructor()).ok().body())
                    .contains("No class is running", "Next: In three days, ", "Early class is over.");
        }
        board.testClock().advance(Duration.ofHours(1));
        assertThat(board.get("/wall", "").ok().body()).contains("No class is running", "Next: In three days, ")
                .doesNotContain("Early class");
    }

    @Test void guests_still_in_the_room_are_bid_farewell_by_the_wall_in_its_largest_words() {
        String over = begun("Early class");
        board.tap(over, command("close")).ok();

        String farewell = board.get("/wall", "").ok().body();
        assertThat(farewell)
                .contains("<h1 class=\"between__heading\">Thank you for coming</h1>", "Early class is over.")
                .doesNotContain("No class is running", "No other class", "opens it by itself");
        assertThat(farewell).as("nothing was poured").doesNotContain("Your candle");
        made("In three days", Duration.ofDays(3));
        assertThat(board.get("/wall", "").ok().body()).contains("Thank you for coming", "Next: In three days, ");
    }

    @Test void a_class_of_this_evening_does_not_take_the_farewell_from_the_afternoons_guests() {
        String evening = made("Evening class", Duration.ofHours(3));
        String over = begun("Afternoon class");
        String before = mark();
        board.tap(over, command("close")).ok();

        assertThat(board.get("/wall", "").ok().body()).contains("Thank you for coming", "Afternoon class is over.",
                "Next: Evening class, ");
        assertThat(classAt("/table")).as("hands go on to what comes").isEqualTo(evening);
        String farewell = mark();
        assertThat(farewell).isNotEqualTo(before);

        board.testClock().advanceMinutes(31);
        assertShows(evening);
        assertThat(mark()).as("so that the wall looks again").isNotEqualTo(farewell);
    }

    @Test void guests_who_are_about_to_sit_down_go_before_those_who_leave() {
        String soon = made("Evening class", Duration.ofMinutes(25));
        String over = begun("Afternoon class");
        board.tap(over, command("close")).ok();

        assertShows(soon);
    }

    @Test void nobody_is_thanked_for_a_class_that_never_began_or_was_closed_the_next_morning() {
        board.tap(made("Never begun", Duration.ZERO), command("close")).ok();
        assertThat(board.get("/wall", "").ok().body()).doesNotContain("Thank you for coming", "Never begun");

        String forgotten = begun("Forgotten");
        board.testClock().advance(Duration.ofHours(14));
        board.tap(forgotten, command("close")).ok();
        assertThat(board.get("/wall", "").ok().body()).doesNotContain("Thank you for coming", "Forgotten");
    }

    // ---- who may

    @Test void the_wall_is_open_to_all_and_the_others_ask_for_the_same_pairing_as_the_pages_of_a_class() {
        begun("Now");

        assertThat(board.get("/wall", "").status()).isEqualTo(200);
        assertThat(board.get("/helper", "").status()).isEqualTo(401);
        assertThat(board.get("/table", "").status()).isEqualTo(401);
        assertThat(board.get("/helper", board.helper()).status()).isEqualTo(200);
        assertThat(board.get("/table", board.helper()).status()).isEqualTo(403);
        assertThat(board.get("/wall", "").body()).doesNotContain("Ida");
    }

    @Test void a_device_that_is_paired_there_comes_back_to_the_same_address() {
        begun("Now");
        Device tablet = here(Device.tablet(board, browser)).expectingRefusals().at("/table");
        tablet.find("#pin").fill(TestBoard.PIN);

        tablet.find("#pair-form [type=submit]").click();

        assertThat(tablet.find(".bar__title")).containsText("Now");
        assertThat(tablet.page()).hasURL(Pattern.compile(".*/table$"));
    }

    // ---- following

    @Test void a_television_moves_on_from_class_to_class_by_itself_with_one_stream_at_most() {
        Device wall = here(Device.wall(board, browser)).at("/wall");
        assertThat(wall.find("h1")).hasText("No class is running");

        String first = made("First class", Duration.ofMinutes(30));
        assertThat(wall.find(".wall")).containsText("First class", patiently());
        board.tap(first, opening("hello")).ok();
        board.tap(first, command("close")).ok();
        String second = begun("Second class");

        assertThat(wall.find("body[data-class='" + second + "'] .wall")).containsText("Second class", patiently());
        assertThat(wall.page()).hasURL(Pattern.compile(".*/wall$"));
        await().atMost(Duration.ofSeconds(40)).untilAsserted(() -> // left streams are noticed at the next beat
                assertThat(board.get("/health", "").json().get("screens").intValue()).isEqualTo(1));
    }

    @Test void a_television_without_a_network_keeps_what_it_shows_and_follows_once_it_is_back() {
        begun("First class");
        Device wall = here(Device.wall(board, browser)).at("/wall");
        assertThat(wall.find(".wall")).containsText("First class");
        AtomicInteger unheard = new AtomicInteger();
        wall.page().onRequestFailed(request -> unheard.incrementAndGet());
        wall.offline(true);
        board.testClock().advanceMinutes(1);
        begun("Second class");
        wall.page().waitForCondition(() -> unheard.get() > 1);
        assertThat(wall.find(".wall")).containsText("First class");

        wall.offline(false);

        assertThat(wall.find(".wall")).containsText("Second class", patiently());
    }

    @Test void a_question_that_the_network_swallows_is_not_asked_again_beside_it() {
        begun("Now");
        Device wall = here(Device.wall(board, browser));
        AtomicInteger asked = new AtomicInteger();
        wall.page().route("**/stream", route -> route.abort()); // which would tell it unasked
        wall.page().route("**/api/shown", route -> asked.incrementAndGet());
        wall.at("/wall");
        wall.page().waitForCondition(() -> asked.get() > 0);
        wall.page().evaluate("let turns = 0; const wait = setTimeout; new Promise((done) => "
                + "{ const turn = () => ++turns > 8 ? done() : wait(turn, 150); turn(); })");

        assertThat(asked).hasValue(1);
    }

    @Test void a_table_is_never_taken_from_a_class_that_runs_but_offers_the_other() {
        String first = begun("First class");
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/table");
        assertThat(tablet.find("#elsewhere")).isHidden();
        board.testClock().advanceMinutes(1);
        String second = begun("Second class");

        assertThat(tablet.find("#elsewhere")).containsText("Also running: Second class", patiently());
        assertThat(tablet.find("body")).hasAttribute("data-class", first);
        assertThat((Boolean) tablet.page().evaluate("document.documentElement.scrollHeight <= innerHeight")).isTrue();
        tablet.find("#elsewhere a").click();
        assertThat(tablet.page()).hasURL(Pattern.compile(".*/classes/" + second + "/instructor$"));
    }

    @Test void a_table_that_waited_goes_to_the_class_that_begins() {
        made("Never begun", Duration.ofMinutes(5));
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/table");
        assertThat(tablet.find(".bar__title")).containsText("Never begun");

        begun("The other");

        assertThat(tablet.find(".bar__title")).containsText("The other", patiently());
        assertThat(tablet.page()).hasURL(Pattern.compile(".*/table$"));
    }

    @Test void a_class_that_is_over_leads_from_the_table_to_its_own_look_back() {
        String id = begun("Now");
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/table");
        board.tap(id, command("close")).ok();

        assertThat(tablet.find("#next")).containsText("This class is closed");
        tablet.find("#next a").click();

        assertThat(tablet.page()).hasURL(Pattern.compile(".*/classes/" + id + "/report$"));
    }
}
