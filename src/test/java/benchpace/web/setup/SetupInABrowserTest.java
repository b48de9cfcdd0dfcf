package benchpace.web.setup;

import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A class from an empty page to a running table, corrected on the way, and one that was a mistake. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SetupInABrowserTest {
    @TempDir Path data;
    private TestBoard board;
    private Device device;

    @BeforeEach void open(Browser browser) {
        board = TestBoard.open(data);
        device = Device.tablet(board, browser).pairedBy(board.instructor());
    }

    @AfterEach void close() {
        device.assertNoComplaint();
        device.close();
        board.close();
    }

    private LiveClass live(String id) {
        return board.boards().find(id).orElseThrow().live();
    }

    private LiveClass only() {
        return board.boards().all().iterator().next().live();
    }

    private Seat seat(String id, int number) {
        return live(id).seat(new SeatNumber(number)).orElseThrow();
    }

    @Test void a_pasted_list_becomes_a_running_table_with_parties_beside_each_other() {
        device.at("/classes/new?plan=evening-pour");
        device.find("#seats").fill("12");
        device.find("#table").selectOption("rounds");
        assertThat(device.page().locator(".drawing__seat")).hasCount(12);
        device.find("#paste summary").click();
        device.find("#list").fill("name;party;note\nIda;choir;no nuts\nTomasz;\nBea;choir\nMaud;choir\nOlle;choir\n"
                + "Per;choir\nZo;school\nKim;school\n");
        device.find("#take").click();
        assertThat(device.find("#guests-answer")).containsText("8 at the table.");
        assertThat(device.page().locator(".drawing__seat").first()).containsText("Ida");
        device.find("#save").click();
        device.page().waitForURL(Pattern.compile("/instructor$"));

        LiveClass live = only();
        assertThat(live.seats()).hasSize(12);
        assertThat(live.seats().stream().filter(s -> s.party().equals("choir")).map(s -> (s.number().value() - 1) / 6)
                .distinct().count()).as("at one table").isOne();
        device.find("#next button").first().click();
        assertThat(device.find("#tile-1")).isVisible();
    }

    @Test void what_is_refused_is_told_at_its_field_and_nothing_is_lost() {
        device.expectingRefusals().at("/classes/new");
        device.find("#seats").fill("61");
        device.page().locator("[data-field=name]").first().fill("Ida");
        device.find("#save").click();
        assertThat(device.page().locator(".fault")).containsText("1 to 60");
        assertThat(device.find("#seats")).isFocused();
        device.find("#seats").fill("4");
        assertThat(device.page().locator("[data-field=name]").first()).hasValue("Ida");
        device.find("#save").click();
        device.page().waitForURL(Pattern.compile("/instructor$"));
        assertThat(only().seats()).hasSize(4);
    }

    @Test void a_file_is_read_and_what_is_no_list_is_told() {
        device.expectingRefusals().at("/classes/new");
        device.find("#seats").fill("3");
        device.find("#paste summary").click();
        String list = "Seat;Name;Note\r\n3;Jos\u00e9;left-handed\r\n1;=1+1;\r\n;Bea;\r\n;Zo;\r\n";
        device.find("#file").setInputFiles(new FilePayload("guests.csv", "text/csv",
                list.getBytes(StandardCharsets.ISO_8859_1)));
        device.find("#take").click();
        assertThat(device.find("#guests-answer")).containsText("1 does not fit, as there are 3 seats: Zo.");
        assertThat(device.page().locator("[data-field=name]").nth(2)).hasValue("Jos\u00e9");
        assertThat(device.page().locator("[data-field=name]").nth(1)).hasValue("Bea");
        assertThat(device.page().locator("[data-field=name]").nth(0)).hasValue("=1+1");

        device.find("#file").setInputFiles(new FilePayload("cat.png", "image/png",
                new byte[] {(byte) 0x89, 'P', 0, 1}));
        device.find("#take").click();
        assertThat(device.find("#guests-answer")).containsText("no list of guests");
        device.find("#file").setInputFiles(new FilePayload("big.csv", "text/csv", new byte[5_000_000]));
        device.find("#take").click();
        assertThat(device.find("#guests-answer")).containsText("too large");
        assertThat(device.page().locator("[data-field=name]").nth(1)).hasValue("Bea");
    }

    @Test void a_class_that_was_a_mistake_is_deleted_and_had_back() {
        String id = board.evening();
        device.at("/classes/" + id + "/setup");
        device.find("#delete").click();
        assertThat(device.find("#deleted")).isVisible();
        assertThat(board.boards().find(id)).isEmpty();
        device.find("#delete-undo").click();
        assertThat(device.find("#setup-form")).isVisible();
        assertThat(live(id).seats()).hasSize(8);
    }

    @Test void seats_and_names_are_corrected_while_the_class_runs_and_taken_back() {
        String id = board.evening();
        board.tap(id, opening("welcome")).ok();
        device.at("/classes/" + id + "/instructor");
        device.find("#menu-button").click();
        device.page().locator("#menu-dialog").getByText("Seats and names").click();
        device.page().locator("form[data-seat='2'] [name=name]").fill("Bodil");
        device.page().locator("form[data-seat='2'] [name=note]").fill("no nuts");
        device.page().locator("form[data-seat='2'] [type=submit]").click();
        assertThat(device.find("#said-words")).hasText("Seat 2 is saved.");
        assertThat(seat(id, 2).mind()).isEqualTo("no nuts");
        device.find("#said-undo").click();
        assertThat(device.find("#said-words")).hasText("That is taken back.");
        assertThat(seat(id, 2).name()).isEqualTo("Tomasz");

        device.page().locator("[data-take-away='8']").click();
        assertThat(device.find("#said-words")).hasText("Seat 8 is taken away.");
        assertThat(device.page().locator("form[data-seat='8']")).hasCount(0);
        device.page().locator("#add-form [name=name]").fill("Io");
        device.page().locator("#add-form [type=submit]").click();
        assertThat(device.page().locator("form[data-seat='9'] [name=name]")).hasValue("Io");
        assertThat(live(id).seats()).hasSize(8);
    }

    @Test void the_name_is_typed_before_a_class_that_has_begun_goes_and_its_screens_say_so() {
        String id = board.evening();
        board.tap(id, opening("welcome")).ok();
        device.expectingRefusals().at("/classes/" + id + "/instructor");
        Page other = device.page().context().newPage();
        other.navigate(board.uri("/classes/" + id + "/setup").toString());
        other.locator("[data-open=delete-dialog]").click();
        other.locator("#delete-form [name=confirm]").fill("Friday");
        other.locator("#delete-form [type=submit]").click();
        assertThat(other.locator("#delete-answer")).containsText("type its name: Thursday");
        other.locator("#delete-form [name=confirm]").fill("Thursday");
        other.locator("#delete-form [type=submit]").click();
        other.waitForURL(board.uri("/").toString());

        assertThat(device.find("#status")).containsText("This class was deleted.");
        assertThat(board.boards().find(id)).isEmpty();
    }

    @Test void place_cards_bear_the_names_that_were_given_and_print_without_buttons() {
        String id = board.evening();
        device.at("/classes/" + id + "/cards");
        device.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(device.page().locator(".tent")).hasCount(8);
        assertThat(device.page().locator(".tent__side--front .tent__name")).hasCount(2);
        assertThat(device.page().locator(".tent__side--front .tent__name").first()).hasText("Ida");
        assertThat(device.page().locator(".tent svg.drawing")).hasCount(16);
        assertThat(device.find("#print")).isHidden();
        assertThat(device.page().pdf(new Page.PdfOptions().setFormat("Letter")).length).isPositive();
    }
}
