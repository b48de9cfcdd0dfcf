package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.roster.Demo;
import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Whoever comes to a board for the first time is offered an evening to watch; whoever knows it is not disturbed. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NewcomerTest {
    private static final String OFFER = "Watch an evening in two minutes";

    @TempDir Path data;
    private TestBoard board;
    private Browser browser;

    @BeforeEach void open(Browser browser) {
        this.browser = browser;
        board = TestBoard.open(data);
        board.boards().create(Demo.eveningPlan(), "Demo", board.clock.instant(), Demo.eveningRoster().places(),
                Demo.BY);
    }

    @AfterEach void close() {
        board.close();
    }

    private String page(String token) {
        return board.get("/", token).ok().body();
    }

    private void ownClass() {
        board.create("{\"planId\":\"table-of-six\",\"name\":\"Hers\",\"startsAt\":\""
                + board.clock.instant().plus(Duration.ofDays(1)) + "\"}");
    }

    @Test void the_first_offer_is_an_evening_to_watch_beside_a_class_to_start_and_nothing_is_to_be_prepared() {
        assertThat(page(board.instructor())).containsSubsequence("id=\"first\"", OFFER, "Start a class",
                        "id=\"classes-title\"", "id=\"set-up-form\"", "id=\"shelf-title\"")
                .doesNotContain("id=\"next\"");
    }

    @Test void a_helper_is_offered_it_too_and_a_stranger_is_not() {
        assertThat(page(board.helper())).containsSubsequence("id=\"first\"", OFFER, "id=\"classes-title\"")
                .doesNotContain("Start a class");
        assertThat(page("")).doesNotContain(OFFER);
    }

    @Test void once_there_is_a_class_of_her_own_the_offer_is_one_line_after_the_classes() {
        ownClass();

        assertThat(page(board.instructor())).containsSubsequence("id=\"next\"", "id=\"classes-title\"", OFFER,
                "id=\"shelf-title\"").doesNotContain("id=\"first\"").containsOnlyOnce("id=\"watch-demo\"");
        assertThat(page(board.helper())).containsSubsequence("id=\"classes-title\"", "New to this?", OFFER);
    }

    @Test void it_is_over_in_two_minutes_at_the_speed_that_it_starts_with_and_says_what_there_is_to_see() {
        String id = board.post("/api/playbacks", "{\"demo\":true}", board.helper()).json()
                .get("id").textValue();
        JsonNode playing = board.get("/api/playbacks/" + id, board.helper()).ok().json();

        Duration lasts = Duration.between(Instant.parse(playing.get("from").textValue()),
                Instant.parse(playing.get("until").textValue()));
        assertThat(lasts.dividedBy(playing.get("speed").longValue())).isLessThanOrEqualTo(Duration.ofMinutes(2));
        assertThat(playing.get("marks")).filteredOn(mark -> mark.get("note").booleanValue()).hasSize(10)
                .anyMatch(mark -> mark.get("words").textValue().startsWith("Seat 4 is slow"));
    }

    @Test void it_is_played_on_the_table_of_the_instructor_and_is_no_class_of_the_board() {
        try (Device tablet = Device.tablet(board, browser).pairedBy(board.instructor()).at("/")) {
            tablet.find("#watch-demo").click();

            tablet.page().waitForURL("**/instructor");
            assertThat(tablet.find(".playback__mark")).containsText("Not a class");
            assertThat(tablet.find(".bar__title").first()).containsText("An evening at the Tallow Loft");
            tablet.assertNoComplaint();
        }
        assertThat(board.boards().all()).extracting(b -> b.live().name()).containsExactly("Demo");
    }

    @Test void a_helper_watches_it_as_a_helpers_phone_shows_it_also_from_the_quiet_line() {
        ownClass();
        try (Device phone = Device.phone(board, browser).pairedBy(board.helper()).at("/")) {
            phone.find("#watch-demo").click();

            phone.page().waitForURL("**/helper");
            assertThat(phone.find(".playback__mark")).containsText("Played back");
            phone.assertNoComplaint();
        }
    }

    @Test void starting_a_class_leads_to_its_form_on_the_page() {
        try (Device phone = Device.phone(board, browser).pairedBy(board.instructor()).at("/")) {
            phone.find("#start-class").click();

            assertThat(phone.find("#set-up-title")).isInViewport();
            assertThat((Boolean) phone.page().evaluate("document.documentElement.scrollWidth <= innerWidth")).isTrue();
        }
    }
}
