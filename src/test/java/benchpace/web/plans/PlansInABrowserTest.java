package benchpace.web.plans;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanFolder;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.TestPlans;
import benchpace.web.AccessibilityTest;
import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The instructor's plans in the browser, from the empty list to an earlier version brought back. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlansInABrowserTest extends LiveScreens {
    private static final Plan TINS = TestPlans.evening().as(new PlanId("tins"), "Tins");
    private static final String OWN = "section:has(#own-title) .row";

    @Override protected void begin() {
        board = TestBoard.open(data);
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/plans");
    }

    private Device phone() {
        return here(Device.phone(board, browser)).pairedBy(board.instructor()).at("/plans");
    }

    private void add() {
        board.post("/api/plans", Json.text(PlanFile.write(TINS)), board.instructor()).ok();
    }

    private void rename(String name) {
        board.send(board.request("/api/plans/tins").header("Authorization", "Bearer " + board.instructor())
                .header("If-Match", "*").PUT(HttpRequest.BodyPublishers.ofString(
                        Json.text(PlanFile.write(TINS.as(TINS.id(), name)))))).ok();
    }

    private List<String> names() {
        return board.get("/api/plans", board.instructor()).json().findValuesAsText("name");
    }

    private static FilePayload file(String name, byte[] content) {
        return new FilePayload(name, "application/json", content);
    }

    @Test void a_starter_plan_is_copied_and_the_copy_is_hers() {
        Device tablet = tablet();
        assertThat(tablet.find("section:has(#own-title)")).containsText("No plan of your own yet.");

        tablet.find(".row:has-text('Table of six') [data-act=copy]").click();
        assertThat(tablet.find("#copy-name")).hasValue("Copy of Table of six");
        tablet.find("#copy-name").fill("Thursday table");
        tablet.page().keyboard().press("Enter");

        assertThat(tablet.find(OWN)).containsText("Thursday table");
        assertThat(tablet.find("#said")).containsText("\"Thursday table\" is one of your plans now.");
        assertThat(tablet.find(OWN + " a:has-text('Edit')")).hasAttribute("href", "/plans/table-of-six-2");
        assertThat(tablet.find("section:has(#starters-title) [data-act=delete]")).hasCount(0);
    }

    @Test void a_new_plan_is_made_from_a_few_answers_and_says_what_it_could_not_do() {
        Device tablet = tablet();
        tablet.find("[data-open=new-dialog]").click();
        assertSound(tablet);
        tablet.find("#new-name").fill("Thursday tea lights");
        tablet.find("#new-minutes").fill("45");
        tablet.find("#new-form [type=submit]").click();

        assertThat(tablet.find("#said")).containsText("\"Thursday tea lights\" is one of your plans now.");
        assertThat(tablet.find("#said")).containsText("collected later");
        assertThat(tablet.find(OWN)).containsText("Thursday tea lights");
        assertThat(tablet.find("#said-edit")).hasAttribute("href", "/plans/thursday-tea-lights");
        assertSound(tablet);
    }

    @Test void what_was_deleted_comes_back_by_one_press() {
        add();
        Device tablet = tablet();

        tablet.find(OWN + " [data-act=delete]").click();

        assertThat(tablet.find("#said")).containsText("\"Tins\" is deleted.");
        assertThat(tablet.find(OWN)).hasCount(0);
        assertThat(names()).doesNotContain("Tins");
        assertThat(tablet.find("#said-undo")).isFocused();
        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find(OWN)).containsText("Tins");
        assertThat(names()).contains("Tins");
    }

    @Test void what_was_deleted_long_ago_comes_back_from_the_end_of_the_page() {
        add();
        Device tablet = tablet();
        tablet.find(OWN + " [data-act=delete]").click();
        assertThat(tablet.find("#said-undo")).isVisible();
        tablet.at("/plans");

        tablet.find("#deleted-plans summary").click();
        tablet.find("#deleted-plans [data-act=restore]").click();

        assertThat(tablet.find(OWN)).containsText("Tins");
        assertThat(tablet.find("#deleted-plans")).hasCount(0);
    }

    @Test void a_plan_that_another_device_changed_is_not_deleted_unseen() {
        add();
        Device tablet = tablet().expectingRefusals();
        rename("Small tins");

        tablet.find(OWN + " [data-act=delete]").click();

        assertThat(tablet.find("#plans-answer")).containsText("\"Small tins\" was changed elsewhere meanwhile");
        assertThat(tablet.find(OWN)).containsText("Small tins");
        assertThat(names()).contains("Small tins");
        tablet.find(OWN + " [data-act=delete]").click();
        assertThat(tablet.find("#said")).containsText("\"Small tins\" is deleted.");
    }

    @Test void what_another_device_did_shows_when_the_page_is_looked_at_again() {
        Device tablet = tablet();
        add();

        tablet.page().evaluate("window.dispatchEvent(new Event('focus'))");

        assertThat(tablet.find(OWN)).containsText("Tins");
    }

    @Test void a_file_is_imported_and_exported_again_as_it_was() throws Exception {
        Device tablet = tablet();
        tablet.find("[data-open=import-dialog]").click();
        tablet.find("#import-file").setInputFiles(file("tins.json", PlanFolder.text(TINS)));
        tablet.find("#import-form [type=submit]").click();
        assertThat(tablet.find(OWN)).containsText("Tins");

        Download download = tablet.page().waitForDownload(() -> tablet.find(OWN + " a:has-text('Export')").click());

        assertThat(download.suggestedFilename()).isEqualTo("tins.json");
        assertThat(Files.readAllBytes(download.path())).isEqualTo(PlanFolder.text(TINS));
    }

    @Test void an_import_says_every_problem_with_its_place_and_keeps_what_was_typed() {
        ObjectNode broken = PlanFile.write(TINS).put("seats", -4);
        ((ObjectNode) broken.at("/steps/1")).put("minutes", 0);
        String text = Json.text(broken);
        Device tablet = tablet().expectingRefusals();
        tablet.find("[data-open=import-dialog]").click();
        tablet.find("#import-form [type=submit]").click();
        assertThat(tablet.find("#import-answer")).hasText("Choose a file, or put its text in.");

        tablet.find("#import-text").fill(text);
        tablet.find("#import-form [type=submit]").click();

        assertThat(tablet.find("#import-answer")).hasText("It was not imported: 2 things are wrong with it.");
        assertThat(tablet.find("#import-problems li")).hasCount(2);
        assertThat(tablet.find("#import-problems li").first()).containsText("/seats");
        assertThat(tablet.find("#import-problems li").last()).containsText("/steps/1/minutes");
        assertThat(tablet.find("#import-text")).hasValue(text);
        assertThat(names()).doesNotContain("Tins");
        assertSound(tablet);

        tablet.find("#import-text").fill(Json.text(PlanFile.write(TINS)));
        tablet.find("#import-form [type=submit]").click();
        assertThat(tablet.find(OWN)).containsText("Tins");
    }

    @Test void a_picture_and_far_too_large_a_file_are_refused_in_a_sentence() {
        Device tablet = tablet().expectingRefusals();
        tablet.find("[data-open=import-dialog]").click();
        tablet.find("#import-file").setInputFiles(file("photo.json", new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1}));
        tablet.find("#import-form [type=submit]").click();
        assertThat(tablet.find("#import-problems li")).containsText("is not sound JSON");

        tablet.find("#import-file").setInputFiles(file("huge.json", "x".repeat(5_000_000)
                .getBytes(StandardCharsets.US_ASCII)));
        tablet.find("#import-form [type=submit]").click();

        assertThat(tablet.find("#import-answer")).hasText("\"huge.json\" is too large: a plan has at most 512 KiB.");
        assertThat(tablet.find("#import-problems li")).hasCount(0);
    }

    @Test void an_earlier_version_is_looked_at_and_brought_back() {
        add();
        Plan shorter = TestPlans.of(TINS.steps().get(1), TINS.steps().get(3)).as(TINS.id(), "Short tins");
        board.send(board.request("/api/plans/tins").header("Authorization", "Bearer " + board.instructor())
                .header("If-Match", "*").PUT(HttpRequest.BodyPublishers.ofString(
                        Json.text(PlanFile.write(shorter))))).ok();
        Device tablet = tablet();
        tablet.find(OWN + " a:has-text('Versions')").click();
        assertThat(tablet.find(".row")).hasCount(2);
        assertThat(tablet.find(".row").first()).containsText("as it is now");
        assertThat(tablet.find(".row").last()).containsText("Called Tins then.");
        assertSound(tablet);

        tablet.find("a[href='/plans/tins/versions/1']").click();
        assertThat(tablet.find("section:has(#steps-title) li")).hasCount(7);
        assertThat(tablet.find(".outline__line--differs")).hasCount(5);
        assertSound(tablet);
        tablet.find("[data-act=bring-back]").click();

        assertThat(tablet.find("h1")).hasText("Versions of Tins");
        assertThat(tablet.find(".row")).hasCount(3);
        Reply now = board.get("/api/plans/tins", board.instructor());
        assertThat(PlanFile.read(now.json()).ifSound()).contains(TINS);
    }

    @Test void helpers_look_at_plans_and_have_nothing_to_change_them_with() {
        add();
        Device phone = here(Device.phone(board, browser)).pairedBy(board.helper()).at("/plans");

        assertThat(phone.find(OWN)).containsText("Tins");
        assertThat(phone.find("main button:visible")).hasCount(0);
        assertThat(phone.find("dialog")).hasCount(0);
        phone.assertNoComplaint();
    }

    @Test void everything_is_reached_by_the_keyboard_and_from_the_start_page() {
        add();
        Device tablet = here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/");
        tablet.find("#plans-link").click();
        tablet.page().waitForURL("**/plans"); // loaded, its scripts too
        tablet.find(OWN + " [data-act=copy]").focus();

        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find("#copy-name")).isFocused();
        tablet.page().keyboard().press("Escape");
        assertThat(tablet.find(OWN + " [data-act=copy]")).isFocused();
    }

    @Test void the_page_is_sound_on_tablet_and_phone_and_nothing_is_wider_than_the_phone() {
        add();
        Device phone = phone();
        assertSound(phone);
        assertThat((boolean) phone.page().evaluate("document.documentElement.scrollWidth <= innerWidth")).isTrue();
        phone.find("[data-open=import-dialog]").click();
        assertSound(phone);
        Device tablet = tablet();
        assertSound(tablet);
        tablet.find(OWN + " [data-act=delete]").click();
        assertThat(tablet.find("#said-undo")).isVisible();
        assertSound(tablet);
    }

    private static void assertSound(Device device) {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            AccessibilityTest.show(device.page(), scheme);
            assertThat(AccessibilityTest.axe(device.page(), scheme).analyze().getViolations().stream()
                    .map(rule -> rule.getId() + ": " + rule.getNodes().stream().map(n -> n.getTarget() + " "
                            + n.getFailureSummary()).toList()).toList()).isEmpty();
        }
    }
}
