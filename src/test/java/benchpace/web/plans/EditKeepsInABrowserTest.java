package benchpace.web.plans;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Reply;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Nothing that was written is lost or overwritten, on any screen. Accessibility by axe-core's rules. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EditKeepsInABrowserTest extends EditScreens {

    // ---- nothing is lost

    @Test void leaving_by_a_link_asks_and_what_was_not_saved_is_offered_again() {
        String id = add(kit());
        Page page = page(id);
        page.locator("#plan-name").fill("Half an idea");
        page.locator(".bar__home").click();
        assertThat(page.locator("#leave-dialog")).isVisible();
        page.locator("#leave-dialog [data-dismiss]").click();
        assertThat(page.locator("#plan-name")).hasValue("Half an idea");
        page.onDialog(dialog -> dialog.accept());
        page.reload();

        assertThat(page.locator("#plan-name")).hasValue("My evening");
        assertThat(page.locator("#edit-offer")).isVisible();
        page.locator("#edit-offer-take").click();
        assertThat(page.locator("#plan-name")).hasValue("Half an idea");
        assertThat(page.locator("#edit-state")).hasText("Not saved yet.");
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 2");
        page.reload();
        assertThat(page.locator("#edit-offer")).isHidden();
    }

    @Test void the_second_of_two_devices_is_told_who_saved_and_may_keep_its_own_as_a_copy() {
        String id = add(kit());
        Page mine = page(id);
        BrowserContext other = context(1280, 800, ColorScheme.LIGHT);
        Page theirs = page(other, id);
        theirs.locator("#plan-name").fill("Theirs");
        save(theirs);
        assertThat(theirs.locator("#edit-state")).containsText("version 2");
        mine.locator("#plan-name").fill("Mine");
        save(mine);

        assertThat(mine.locator("#stale-dialog")).isVisible();
        assertThat(mine.locator("#stale-words")).containsText("changed elsewhere meanwhile");
        assertThat(mine.locator("#stale-words")).containsText("Version 2");
        assertThat(saved(id).at("/name").textValue()).isEqualTo("Theirs");
        noViolations(mine);
        mine.locator("#stale-copy").click();
        mine.waitForURL(Pattern.compile(".*/plans/" + id + "-2$"));
        assertThat(mine.locator("#plan-name")).hasValue("Mine (copy)");
        assertThat(saved(id).at("/name").textValue()).isEqualTo("Theirs");
        other.close();
    }

    @Test void changes_taken_up_again_overwrite_nothing_that_was_saved_since_they_began() {
        String id = add(kit());
        Page mine = page(id);
        mine.locator("#plan-name").fill("Mine");
        BrowserContext other = context(1280, 800, ColorScheme.LIGHT);
        Page theirs = page(other, id);
        theirs.locator("#plan-name").fill("Theirs");
        save(theirs);
        assertThat(theirs.locator("#edit-state")).containsText("version 2");
        mine.onDialog(dialog -> dialog.accept());
        mine.reload();
        assertThat(mine.locator("#edit-offer-older")).isVisible();
        mine.locator("#edit-offer-take").click();
        save(mine);

        assertThat(mine.locator("#stale-dialog")).isVisible();
        assertThat(saved(id).at("/name").textValue()).isEqualTo("Theirs");
        other.close();
    }

    @Test void a_starter_plan_is_looked_at_and_copied() {
        Page page = page("evening-pour");
        assertThat(page.locator("#plan-name")).isDisabled();
        assertThat(page.locator("#edit-save")).hasCount(0);
        noViolations(page);
        page.locator("#edit-copy").click();
        page.waitForURL(Pattern.compile(".*/plans/evening-pour-2$"));

        assertThat(page.locator("#plan-name")).isEnabled();
    }

    @Test void an_earlier_version_is_looked_at_and_brought_back() {
        String id = add(kit());
        Page page = page(id);
        page.locator("#plan-name").fill("Second thought");
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 2");
        page.navigate(board.uri("/plans/" + id + "?version=1").toString());
        assertThat(page.locator("#plan-name")).isDisabled();
        assertThat(page.locator("#plan-name")).hasValue("My evening");
        page.locator("#edit-bring-back").click();
        page.waitForURL(Pattern.compile(".*/plans/" + id + "$"));

        assertThat(page.locator("#edit-state")).hasText("Version 3, saved.");
        assertThat(page.locator("#plan-name")).hasValue("My evening");
    }

    // ---- every screen

    @Test void with_everything_unfolded_the_page_holds_the_rules_of_accessibility_by_day_and_by_night() {
        String id = add(kit());
        for (ColorScheme colours : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            BrowserContext of = context(1280, 800, colours);
            Page page = page(of, id);
            page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
            input(row(page, "steps", 2), "minutes").fill("x");
            assertThat(page.locator("#edit-problems")).isVisible();
            noViolations(page);
            of.close();
        }
    }

    @Test void on_a_phone_it_is_one_column_and_nothing_sticks_out() {
        BrowserContext phone = context(390, 844, ColorScheme.LIGHT);
        Page page = page(phone, add(kit()));
        page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");

        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(390);
        assertThat(page.locator("#edit-save")).isInViewport();
        noViolations(page);
        phone.close();
    }

    @Test void thirty_steps_and_sixty_supplies_stay_quick_under_the_fingers() {
        ObjectNode plan = kit();
        ArrayNode steps = (ArrayNode) plan.get("steps");
        for (int n = steps.size(); n < 30; n++) {
            steps.insert(1, Json.object().put("id", "extra-" + n).put("name", "Extra " + n).put("kind", "hands-on")
                    .put("minutes", 1));
        }
        ArrayNode supplies = (ArrayNode) plan.at("/prep/supplies");
        for (int n = supplies.size(); n < 60; n++) {
            supplies.addObject().put("id", "thing-" + n).put("name", "Thing " + n).put("perSeat", 1).put("packSize", 1);
        }
        Page page = page(add(plan));
        row(page, "steps", 30).locator("summary").click();
        input(row(page, "steps", 30), "name").focus();
        Object millis = page.evaluate("""
                () => { const began = performance.now();
                  const input = document.activeElement;
                  for (let n = 0; n < 20; n += 1) {
                    input.value += 'x';
                    input.dispatchEvent(new Event('input', { bubbles: true }));
                  }
                  return (performance.now() - began) / 20; }""");

        assertThat(((Number) millis).doubleValue()).isLessThan(100);
        assertThat(page.locator("#edit-problems")).isHidden();
    }

    @Test void helpers_and_guests_are_not_let_in() {
        Reply helper = board.get("/plans/evening-pour", board.helper());
        Reply guest = board.get("/plans/evening-pour", "");

        assertThat(helper.status()).isEqualTo(403);
        assertThat(guest.status()).isEqualTo(401);
    }
}
