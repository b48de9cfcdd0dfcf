package benchpace.web.plans;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Writing a plan as fingers and keys meet it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EditInABrowserTest extends EditScreens {

    // ---- writing

    @Test void a_plan_is_written_and_saved_by_the_keyboard_alone() {
        String id = bare();
        Page page = page(id);
        page.locator("#plan-name").focus();
        page.keyboard().press("Control+A");
        page.keyboard().type("Tins in an hour");
        page.locator("#steps [data-add]").focus();
        page.keyboard().press("Enter");
        page.keyboard().type("Pour");
        page.keyboard().press("Tab");
        page.keyboard().type("pour");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().press("Control+A");
        page.keyboard().type("6");
        page.keyboard().press("Control+s");

        assertThat(page.locator("#edit-state")).hasText(Pattern.compile("Saved .*, version 2\\."));
        JsonNode plan = saved(id);
        assertThat(plan.at("/name").textValue()).isEqualTo("Tins in an hour");
        assertThat(plan.at("/steps/1/id").textValue()).isEqualTo("pour");
        assertThat(plan.at("/steps/1/kind").textValue()).isEqualTo("pour");
        assertThat(plan.at("/steps/1/minutes").intValue()).isEqualTo(6);
    }

    @Test void a_step_is_moved_by_keys_and_by_a_button_and_it_is_told_where_it_stands() {
        String id = add(kit());
        Page page = page(id);
        row(page, "steps", 3).locator("summary").focus();
        page.keyboard().press("Alt+ArrowUp");

        assertThat(page.locator("#edit-said")).hasText("Set the wick is now 2 of 12.");
        assertThat(row(page, "steps", 2).locator("summary")).isFocused();
        row(page, "steps", 2).locator("[data-move=up]").click();
        assertThat(page.locator("#edit-said")).hasText("Set the wick is now 1 of 12.");
        assertThat(row(page, "steps", 1).locator("[data-move=up]")).isDisabled();
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 2");
        assertThat(saved(id).at("/steps/0/id").textValue()).isEqualTo("wicks");
    }

    @Test void a_row_that_was_removed_is_put_back_where_it_was() {
        Page page = page(add(kit()));
        row(page, "steps", 2).locator("[data-remove]").click();
        assertThat(page.locator("#edit-undo")).containsText("Removed: Choose and wipe the glass.");
        assertThat(page.locator("#edit-undo-button")).isFocused();
        assertThat(page.locator("#steps .edit-row")).hasCount(11);
        page.keyboard().press("Enter");

        assertThat(page.locator("#steps .edit-row")).hasCount(12);
        assertThat(row(page, "steps", 2).locator(".edit-row__name")).hasText("Choose and wipe the glass");
        assertThat(page.locator("#edit-state")).not().containsText("Saved");
    }

    @Test void the_picture_of_a_step_stands_beside_its_choice_and_is_kept_until_its_kind_is_to_choose() {
        String id = add(kit());
        Page page = page(id);
        row(page, "steps", 2).locator("summary").click();
        Locator drawing = field(row(page, "steps", 2), "picture").locator(".edit-field__drawing");
        assertThat(drawing).hasAttribute("data-shown", "vessel");
        input(row(page, "steps", 2), "picture").selectOption("wick");
        assertThat(drawing).hasAttribute("data-shown", "wick");
        assertThat(drawing.locator("svg.drawing")).isVisible();
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 2");
        assertThat(saved(id).at("/steps/1/picture").textValue()).isEqualTo("wick");

        input(row(page, "steps", 2), "picture").selectOption("");
        assertThat(drawing).hasAttribute("data-shown", "vessel");
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 3");
        assertThat(saved(id).at("/steps/1").has("picture")).isFalse();
    }

    // ---- the check beside the field

    @Test void a_problem_stands_beside_its_field_as_long_as_it_is_there() {
        String id = add(kit());
        Page page = page(id);
        row(page, "steps", 2).locator("summary").click();
        input(row(page, "steps", 2), "minutes").fill("-3");

        Locator fault = field(row(page, "steps", 2), "minutes").locator(".fault");
        assertThat(fault).containsText("must be above 0 and at most 480 minutes");
        assertThat(input(row(page, "steps", 2), "minutes")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#edit-problems-count")).hasText("1 thing to mend");
        assertThat(page.locator(".edit-nav a[href='#steps']")).containsText("1 to mend");
        save(page);
        assertThat(page.locator("#edit-state")).hasText("Not saved: one thing is to be mended first.");
        assertThat(input(row(page, "steps", 2), "minutes")).isFocused();
        assertThat(saved(id).at("/steps/1/minutes").intValue()).isEqualTo(3);
        input(row(page, "steps", 2), "minutes").fill("7");

        assertThat(fault).hasText("");
        assertThat(page.locator("#edit-problems")).isHidden();
        assertThat(page.locator("#preview-parts")).containsText("0:12");
    }

    @Test void the_list_of_problems_leads_to_each_of_them_even_in_what_is_folded() {
        Page page = page(add(kit()));
        page.locator("#supplies > details > summary").click();
        row(page, "supplies", 1).locator("summary").click();
        input(row(page, "supplies", 1), "packSize").fill("0");
        row(page, "supplies", 1).locator("summary").click();
        page.locator("#supplies > details > summary").click();
        assertThat(page.locator("#edit-problems-count")).hasText("1 thing to mend");
        page.locator("#edit-problems summary").click();
        page.locator("#edit-problems-list button").click();

        assertThat(input(row(page, "supplies", 1), "packSize")).isFocused();
        assertThat(input(row(page, "supplies", 1), "packSize")).isVisible();
    }

    @Test void each_field_that_does_not_hold_says_so_in_one_sentence_at_its_place() {
        Page page = page(add(kit()));
        input(page.locator("#plan"), "seats").fill("4000");
        row(page, "candles", 1).locator("summary").click();
        input(row(page, "candles", 1), "fillGrams").fill("8 bananas");
        input(row(page, "candles", 1), "vessel/wallMm").fill("NaN");
        input(row(page, "candles", 1), "_percent").fill("101");

        assertThat(field(page.locator("#plan"), "seats").locator(".fault")).hasText("This must be 1 to 60, not 4000.");
        assertThat(field(row(page, "candles", 1), "fillGrams").locator(".fault"))
                .hasText("\"8 bananas\" is not a weight: give a number and grams, kg, oz or lb.");
        assertThat(field(row(page, "candles", 1), "vessel/wallMm").locator(".fault")).containsText("must be a number");
        assertThat(field(row(page, "candles", 1), "_percent").locator(".fault")).containsText("not 101");
        assertThat(page.locator("#edit-problems-count")).hasText("4 things to mend");
    }

    // ---- what it comes to

    @Test void the_preview_has_times_lines_cures_and_the_odds() {
        Page page = page(add(kit()));

        assertThat(page.locator("#preview-parts")).containsText("1 h 44 min if all goes as planned");
        assertThat(page.locator("#preview-parts .come__candles")).containsText("Soy in an amber glass");
        assertThat(page.locator("#preview-parts .line")).hasCount(8);
        assertThat(page.locator("#preview-odds .come__chance"))
                .hasText(Pattern.compile("\\d+ in 100, give or take .*"));
        assertThat(page.locator("#preview-odds progress")).hasCount(0);
    }

    @Test void a_tap_that_cannot_serve_all_in_time_says_so_and_what_would_help() {
        ObjectNode plan = kit().put("seats", 40);
        ((ObjectNode) plan.at("/steps/6")).put("minutes", 10).putObject("stations").put("atOnce", 1)
                .put("what", "melter tap").put("minutesEach", 4);
        Page page = page(add(plan));

        assertThat(page.locator("#preview-parts .flag").last()).containsText("\"Pour\" cannot be done in time");
        assertThat(page.locator("#preview-parts .flag").last()).containsText("What would do");
    }

    @Test void both_percentages_of_fragrance_stand_side_by_side() {
        Page page = page(add(kit()));
        row(page, "candles", 1).locator("summary").click();
        input(row(page, "candles", 1), "_percent").fill("8");

        assertThat(field(row(page, "candles", 1), "_percent").locator(".edit-field__beside"))
                .hasText("8 % of the wax, 7.41 % of all that is poured");
    }

    // ---- units

    @Test void ounces_are_shown_again_as_they_were_typed() {
        String id = add(kit());
        Page page = page(id);
        row(page, "candles", 1).locator("summary").click();
        input(row(page, "candles", 1), "fillGrams").fill("4 oz");
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 2");
        page.reload();

        row(page, "candles", 1).locator("summary").click();
        assertThat(input(row(page, "candles", 1), "fillGrams")).hasValue("4 oz");
        assertThat(saved(id).at("/candles/0/fillGrams").doubleValue()).isEqualTo(113.3980925);
    }

    @Test void other_units_take_along_what_is_not_saved_and_change_nothing_by_themselves() {
        String id = add(kit());
        Page page = page(id);
        page.locator("#plan-name").fill("In ounces");
        page.locator("#units-mass").selectOption("ounce");
        page.waitForURL(Pattern.compile(".*/plans/" + id + "$"));

        assertThat(page.locator("#units-mass")).hasValue("ounce");
        assertThat(page.locator("#plan-name")).hasValue("In ounces");
        row(page, "candles", 1).locator("summary").click();
        assertThat(field(row(page, "candles", 1), "fillGrams").locator("label")).containsText("oz");
        save(page);
        assertThat(page.locator("#edit-state")).containsText("version 2");
        assertThat(saved(id).get("candles")).isEqualTo(kitAsSaved().get("candles"));
    }

    private JsonNode kitAsSaved() {
        return saved(add(kit().put("id", "as-saved")));
    }
}
