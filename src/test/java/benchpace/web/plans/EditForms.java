package benchpace.web.plans;

import benchpace.files.Json;
import benchpace.plan.Plan;
import benchpace.units.UnitChoice;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.plans.EditRow;
import benchpace.web.screen.plans.EditSections;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Forms as {@code static/js/plans/edit-form.js} makes them. */
final class EditForms {
    private EditForms() { }

    /** The form as the page's script would send it if nobody touched anything. */
    static ObjectNode untouched(Plan plan, UnitChoice units) {
        ObjectNode form = Json.object();
        for (EditPage.Section section : new EditSections(plan, units).all()) {
            if (section.isList()) {
                var rows = form.putArray(section.token());
                section.rows().forEach(row -> rows.add(row(row)));
            } else {
                form.set(section.token(), row(section.fresh()));
            }
        }
        return form;
    }

    private static ObjectNode row(EditRow row) {
        ObjectNode node = Json.object().put("id", row.id()).put("rest", row.rest());
        ObjectNode values = node.putObject("values");
        row.values().forEach(values::put);
        ObjectNode exact = node.putObject("exact");
        row.exact().forEach(exact::put);
        return node;
    }
}
