package benchpace.web.screen.plans;

import benchpace.files.Json;
import benchpace.plan.kit.LoadConvention;
import benchpace.units.UnitChoice;
import benchpace.web.screen.plans.EditField.Sort;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A plan's JSON turned into what the fields show. {@code web.plans.EditReading} turns it back; what has no field goes
 * along as it is.
 */
final class EditShown {
    private static final Set<String> FRAGRANCE =
            Set.of("fragrancePercentOfWax", "fragrancePercentOfTotal", "fragranceFraction", "fragranceConvention");

    private final UnitChoice units;
    private final Map<String, JsonNode> waxes;

    /** @param waxes those to choose from, by id, as plans write them out */
    EditShown(UnitChoice units, Map<String, JsonNode> waxes) {
        this.units = units;
        this.waxes = waxes;
    }

    EditRow row(String key, List<EditField> fields, JsonNode node) {
        Map<String, String> values = new LinkedHashMap<>();
        Map<String, String> exact = new LinkedHashMap<>();
        ObjectNode rest = node.isObject() ? ((ObjectNode) node).deepCopy() : Json.object();
        for (EditField field : fields) {
            if (field.decides()) {
                values.put(field.at(), decided(field.at(), node));
                continue;
            }
            if (!chosenWax(field, values)) {
                show(field, node, values, exact);
            }
            take(rest, field.at());
        }
        takeDecided(fields, values, rest);
        return new EditRow(key, node.path("id").asText(""), fields, values, exact, Json.text(rest));
    }

    private static boolean chosenWax(EditField field, Map<String, String> values) {
        return field.at().startsWith("wax/") && !EditFields.OWN_WAX.equals(values.get("_wax"));
    }

    private void show(EditField field, JsonNode node, Map<String, String> values, Map<String, String> exact) {
        JsonNode value = node.at("/" + field.at());
        if (!field.sort().measured() || !value.isNumber()) {
            values.put(field.at(), field.isFlag() && !value.isBoolean() ? "false" : plain(value));
            return;
        }
        JsonPointer pointer = JsonPointer.compile("/" + field.at());
        JsonNode typed = node.at(pointer.head()).path("asTyped").path(pointer.last().getMatchingProperty());
        if (typed.isTextual()) {
            values.put(field.at(), typed.textValue());
            return;
        }
        if (field.sort().unit(units).equals(field.sort().base())) {
            values.put(field.at(), plain(value));
        } else {
            values.put(field.at(), inUnits(field.sort(), value.doubleValue()));
            exact.put(field.at(), plain(value));
        }
    }

    private String inUnits(Sort sort, double figure) {
        return switch (sort) {
            case MASS -> units.mass(figure);
            case VOLUME -> units.volume(figure);
            default -> units.temperature(figure);
        };
    }

    /** A number without an exponent and without a nought behind the point; several words apart by spaces. */
    static String plain(JsonNode value) {
        if (value.isNumber()) {
            return EditField.plain(value.decimalValue());
        }
        if (value.isArray()) {
            List<String> words = new ArrayList<>();
            value.forEach(v -> words.add(v.asText()));
            return String.join(" ", words);
        }
        return value.isNull() || value.isObject() ? "" : value.asText("");
    }

    private String decided(String at, JsonNode node) {
        return switch (at) {
            case "_stations" -> Boolean.toString(node.path("stations").isObject());
            case "_wax" -> wax(node.path("wax"));
            case "_fill" -> node.has("brimMillilitres") ? "brim" : "mass";
            case "_fillPercent" -> node.path("fillFraction").isNumber()
                    ? EditField.plain(node.path("fillFraction").decimalValue().movePointRight(2)) : "85";
            case "_convention" -> convention(node) == LoadConvention.OF_TOTAL ? "of-total" : "of-wax";
            case "_percent" -> percent(node);
            default -> throw new IllegalArgumentException(at);
        };
    }

    private String wax(JsonNode wax) {
        return wax.isTextual() ? wax.textValue() : waxes.entrySet().stream()
                .filter(w -> w.getValue().equals(wax)).map(Map.Entry::getKey).findFirst()
                .orElse(EditFields.OWN_WAX);
    }

    private static LoadConvention convention(JsonNode node) {
        return node.has("fragrancePercentOfTotal") || node.path("fragranceConvention").asText().equals("of-total")
                ? LoadConvention.OF_TOTAL : LoadConvention.OF_WAX;
    }

    private static String percent(JsonNode node) {
        for (String field : List.of("fragrancePercentOfWax", "fragrancePercentOfTotal")) {
            if (node.path(field).isNumber()) {
                return plain(node.path(field));
            }
        }
        double fraction = node.path("fragranceFraction").asDouble();
        return EditField.plain(BigDecimal.valueOf(convention(node).percent(fraction)));
    }

    private static void takeDecided(List<EditField> fields, Map<String, String> values, ObjectNode rest) {
        if (fields.stream().anyMatch(f -> f.at().equals("_wax"))) {
            rest.remove(FRAGRANCE);
            rest.remove(List.of("brimMillilitres", "fillFraction", "fillGrams"));
            if (!EditFields.OWN_WAX.equals(values.get("_wax"))) {
                rest.remove("wax");
            }
        }
    }

    private static void take(ObjectNode rest, String at) {
        JsonPointer pointer = JsonPointer.compile("/" + at);
        if (rest.at(pointer.head()) instanceof ObjectNode owner) {
            String name = pointer.last().getMatchingProperty();
            owner.remove(name);
            if (owner.get("asTyped") instanceof ObjectNode typed) {
                typed.remove(name);
                if (typed.isEmpty()) {
                    owner.remove("asTyped");
                }
            }
        }
    }
}
