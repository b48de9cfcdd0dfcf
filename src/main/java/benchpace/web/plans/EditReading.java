package benchpace.web.plans;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.units.Typed;
import benchpace.units.UnitChoice;
import benchpace.web.screen.plans.EditField;
import benchpace.web.screen.plans.EditField.Sort;
import benchpace.web.screen.plans.EditFields;
import benchpace.web.screen.plans.EditKind;
import benchpace.web.screen.plans.EditRow;
import benchpace.words.FieldWords;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads the form of the page that edits a plan: what was typed, by the places of its fields, becomes the JSON of a plan
 * file, which then is read by the rules for those. Only what has no place there is told of here: a weight that is none.
 */
final class EditReading {
    private final ObjectNode plan = Json.object();
    private final List<Finding> problems = new ArrayList<>();

    private final UnitChoice units;

    private EditReading(UnitChoice units) {
        this.units = units;
    }

    /** @param plan as plan files have it; @param problems of what could not be put there, by its place in it */
    record Read(ObjectNode plan, List<Finding> problems) {
        Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * @param form  as {@code static/js/plans/edit-form.js} makes it; whatever else it is, it is read as an empty one
     * @param units of figures that are typed without one
     */
    static Read read(String id, JsonNode form, UnitChoice units) {
        EditReading reading = new EditReading(units);
        reading.plan.setAll(reading.row("", EditFields.PLAN, form.path("plan")));
        reading.plan.put("id", id);
        ObjectNode prep = reading.row("/prep", EditFields.EVENING, form.path("evening"));
        ObjectNode loads = reading.row("/prep/loads", EditFields.LOADS, form.path("loads"));
        if (!loads.isEmpty()) {
            prep.set("loads", loads);
        }
        for (EditKind kind : EditKind.values()) {
            ArrayNode list = reading.list(kind, form.path(kind.token()));
            if (!kind.ofPrep()) {
                reading.plan.set(kind.field(), list);
            } else if (!list.isEmpty()) {
                prep.set(kind.field(), list);
            }
        }
        if (!prep.isEmpty()) {
            reading.plan.set("prep", prep);
        }
        return new Read(reading.plan, reading.problems);
    }

    private ArrayNode list(EditKind kind, JsonNode rows) {
        ArrayNode list = plan.arrayNode();
        Set<String> ids = new HashSet<>();
        rows.forEach(row -> ids.add(row.path("id").asText()));
        for (JsonNode row : rows) {
            String place = kind.place() + "/" + list.size();
            ObjectNode entry = row(place, kind.fields(), row);
            String id = row.path("id").asText();
            // one without a name has no id either, and the name is what is missing
            for (int n = list.size() + 1; id.isEmpty() || id.startsWith("NEW"); n++) {
                id = ids.add(kind.one() + "-" + n) ? kind.one() + "-" + n : "";
            }
            entry.put("id", id);
            list.add(entry);
        }
        return list;
    }

    private ObjectNode row(String place, List<EditField> fields, JsonNode row) {
        ObjectNode node = rest(row.path("rest").asText());
        Map<String, String> values = new LinkedHashMap<>();
        fields.forEach(f -> values.put(f.at(), row.path("values").path(f.at()).asText("")));
        EditRow shown = new EditRow("", "", fields, values, Map.of(), "");
        for (EditField field : fields) {
            if (!field.decides() && shown.asked(field)) {
                JsonNode exact = row.path("exact").path(field.at());
                put(node, place, field, values.get(field.at()), exact.asText(""));
            }
        }
        if (values.containsKey("_wax")) {
            candle(node, place, values);
        }
        if (values.containsKey("_stations") && !"true".equals(values.get("_stations"))) {
            node.remove("stations");
        }
        return node;
    }

    private static ObjectNode rest(String json) {
        try {
            return Json.read(json) instanceof ObjectNode object ? object : Json.object();
        } catch (JsonProcessingException | IllegalArgumentException notOurs) {
            return Json.object();
        }
    }

    private void put(ObjectNode row, String place, EditField field, String value, String exact) {
        JsonPointer pointer = JsonPointer.compile("/" + field.at());
        String name = pointer.last().getMatchingProperty();
        switch (field.sort()) {
            case FLAG -> owner(row, pointer).put(name, value.equals("true"));
            case SEVERAL -> {
                ArrayNode several = owner(row, pointer).putArray(name);
                for (String one : value.split(" ")) {
                    if (!one.isEmpty()) {
                        several.add(one);
                    }
                }
            }
            case LINE, TEXT, CHOICE -> {
                if (!value.isEmpty()) {
                    owner(row, pointer).put(name, value);
                }
            }
            case NUMBER -> {
                if (!value.isBlank()) {
                    number(owner(row, pointer), name, place + "/" + field.at(), value);
                }
            }
            case MASS, VOLUME, DEGREES -> {
                if (!value.isBlank()) {
                    measured(owner(row, pointer), name, place + "/" + field.at(), field.sort(), value, exact);
                }
            }
        }
    }

    private static ObjectNode owner(ObjectNode row, JsonPointer pointer) {
        ObjectNode owner = row;
        for (JsonPointer p = pointer; !p.tail().matches(); p = p.tail()) {
            owner = inner(owner, p.getMatchingProperty());
        }
        return owner;
    }

    private static ObjectNode inner(ObjectNode owner, String name) {
        return owner.get(name) instanceof ObjectNode there ? there : owner.putObject(name);
    }

    /** What is no number stays text, and the reader of plan files says so. */
    private void number(ObjectNode owner, String name, String place, String text) {
        if (TypedNumber.isEither(text)) {
            problems.add(new Finding(place, FieldWords.eitherNumber(text.strip())));
        } else {
            TypedNumber.of(text).ifPresentOrElse(n -> put(owner, name, n), () -> owner.put(name, text.strip()));
        }
    }

    private static void put(ObjectNode owner, String name, BigDecimal value) {
        if (value.signum() == 0 || value.stripTrailingZeros().scale() <= 0) {
            owner.put(name, value.toBigInteger());
        } else {
            owner.put(name, value.doubleValue());
        }
    }

    private void measured(ObjectNode owner, String name, String place, Sort sort, String value, String exact) {
        if (!exact.isEmpty()) {
            number(owner, name, place, exact);
            return;
        }
        try {
            Typed typed = typed(sort, value);
            BigDecimal figure = BigDecimal.valueOf(typed.value());
            put(owner, name, figure);
            // the numbers of a wax come from a data sheet and are kept as numbers
            if (!place.contains("/wax/") && !typed.text().equals(EditField.plain(figure) + " " + sort.base())) {
                inner(owner, "asTyped").put(name, typed.text());
            }
        } catch (IllegalArgumentException notOne) {
            problems.add(new Finding(place, notOne.getMessage()));
        }
    }

    private Typed typed(Sort sort, String value) {
        return switch (sort) {
            case MASS -> Typed.mass(value, units);
            case VOLUME -> Typed.volume(value, units);
            default -> Typed.temperature(value, units);
        };
    }

    /** What a candle's deciding fields come to. */
    private void candle(ObjectNode candle, String place, Map<String, String> values) {
        String wax = values.get("_wax");
        if (!wax.equals(EditFields.OWN_WAX)) {
            candle.put("wax", wax);
        } else if (candle.path("wax") instanceof ObjectNode own && !own.has("id")) {
            own.put("id", "own-" + candle.path("name").asText("wax").toLowerCase(java.util.Locale.ROOT)
                    .replaceAll("[^a-z0-9]+", "-"));
        }
        String share = values.getOrDefault("_fillPercent", "");
        if (values.get("_fill").equals("brim") && !share.isBlank()) {
            TypedNumber.of(share).ifPresentOrElse(n -> put(candle, "fillFraction", n.movePointLeft(2)),
                    () -> candle.put("fillFraction", share.strip()));
        }
        if (!values.get("_percent").isBlank()) {
            number(candle, values.get("_convention").equals("of-total") ? "fragrancePercentOfTotal"
                    : "fragrancePercentOfWax", place + "/_percent", values.get("_percent"));
        }
        if (candle.path("vessel") instanceof ObjectNode vessel && !vessel.has("id")) {
            vessel.put("id", "vessel");
        }
    }
}
