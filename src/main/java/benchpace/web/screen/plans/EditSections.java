package benchpace.web.screen.plans;

import benchpace.files.plan.PlanFile;
import benchpace.files.plan.WaxFile;
import benchpace.plan.Plan;
import benchpace.plan.Wax;
import benchpace.units.UnitChoice;
import benchpace.web.screen.plans.EditField.Choice;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The sections of the page that edits a plan, filled in. */
public final class EditSections {
    /** What the plan itself keeps beside what the sections show. */
    private static final List<String> ELSEWHERE = List.of("steps", "candles", "activities", "prep");

    private final EditShown shown;
    private final List<Choice> waxes;
    private final ObjectNode plan;

    /** @param units that masses, volumes and temperatures are shown in */
    public EditSections(Plan plan, UnitChoice units) {
        this.plan = PlanFile.write(plan);
        List<Wax> known = WaxFile.builtIn().stream().map(WaxFile.SourcedWax::wax).toList();
        this.waxes = known.stream().map(wax -> new Choice(wax.id(), wax.name())).toList();
        Map<String, JsonNode> written = new LinkedHashMap<>();
        known.forEach(wax -> written.put(wax.id(), WaxFile.write(wax)));
        this.shown = new EditShown(units, written);
    }

    /** In the order of the page. */
    public List<EditPage.Section> all() {
        List<EditPage.Section> all = new ArrayList<>();
        ObjectNode head = plan.deepCopy();
        head.remove(ELSEWHERE);
        all.add(single("plan", "The plan", "", "", EditFields.PLAN, head));
        all.add(list(EditKind.STEPS));
        all.add(list(EditKind.CANDLES));
        all.add(single("loads", "What the makers allow", "As their documents say: without both limits no load can be "
                + "called allowed.", "/prep/loads", EditFields.LOADS, plan.at("/prep/loads")));
        all.add(list(EditKind.ACTIVITIES));
        all.add(list(EditKind.SUPPLIES));
        all.add(list(EditKind.MELTERS));
        all.add(list(EditKind.CIRCUITS));
        all.add(list(EditKind.APPLIANCES));
        ObjectNode evening = plan.path("prep") instanceof ObjectNode prep ? prep.deepCopy() : plan.objectNode();
        evening.remove(List.of("loads", "melters", "appliances", "circuits", "supplies"));
        all.add(single("evening", "Promise and margins", "", "/prep", EditFields.EVENING, evening));
        return all;
    }

    private EditPage.Section single(String token, String title, String words, String place, List<EditField> fields,
                                    JsonNode node) {
        return EditPage.Section.of(token, title, words, place, shown.row(token, fields, node));
    }

    private EditPage.Section list(EditKind kind) {
        List<EditField> fields = withChoices(kind);
        List<EditRow> rows = new ArrayList<>();
        for (JsonNode node : plan.at(kind.place())) {
            rows.add(shown.row(kind.token() + "-" + rows.size(), fields, node));
        }
        return EditPage.Section.of(kind, rows, EditRow.fresh(kind.token(), fields));
    }

    private List<EditField> withChoices(EditKind kind) {
        return switch (kind) {
            case CANDLES -> EditFields.withWaxes(kind.fields(), waxes);
            case MELTERS -> EditFields.withWaxes(kind.fields(), candleWaxes());
            case APPLIANCES -> kind.fields().stream().map(f -> switch (f.at()) {
                case "melter" -> f.among(named("/prep/melters", "no melter"));
                case "circuit" -> f.among(named("/prep/circuits", "not settled yet"));
                default -> f;
            }).toList();
            default -> kind.fields();
        };
    }

    /** Those to choose from and whatever the plan's candles and melters name besides. */
    private List<Choice> candleWaxes() {
        Map<String, String> all = new LinkedHashMap<>();
        waxes.forEach(w -> all.put(w.id(), w.words()));
        for (JsonNode candle : plan.path("candles")) {
            JsonNode wax = candle.path("wax");
            if (wax.isObject()) {
                all.putIfAbsent(wax.path("id").asText(), wax.path("name").asText());
            }
        }
        for (JsonNode melter : plan.at("/prep/melters")) {
            all.putIfAbsent(melter.path("wax").asText(), melter.path("wax").asText());
        }
        return choices(all);
    }

    private List<Choice> named(String place, String none) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", none);
        plan.at(place).forEach(n -> all.put(n.path("id").asText(), n.path("name").asText()));
        return choices(all);
    }

    private static List<Choice> choices(Map<String, String> all) {
        List<Choice> choices = new ArrayList<>();
        all.forEach((id, words) -> choices.add(new Choice(id, words)));
        return choices;
    }
}
