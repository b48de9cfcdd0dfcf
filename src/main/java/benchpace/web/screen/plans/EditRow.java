package benchpace.web.screen.plans;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One entry of a list, or the only one of a section, as its fields show it.
 *
 * @param key    names it within the page, for ids
 * @param id     by which other parts of the plan name it; empty for a new one, and where there is none
 * @param values what each field shows, by its place
 * @param exact  of measured ones whose figure is only shown rounded: the figure itself
 * @param rest   what the plan says of it beside its fields, as JSON
 */
public record EditRow(String key, String id, List<EditField> fields, Map<String, String> values,
                      Map<String, String> exact, String rest) {
    public EditRow {
        fields = List.copyOf(fields);
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        exact = Collections.unmodifiableMap(new LinkedHashMap<>(exact));
    }

    /** One that is not in the plan yet; the page's script puts something in the place of {@code NEW}. */
    static EditRow fresh(String token, List<EditField> fields) {
        Map<String, String> values = new LinkedHashMap<>();
        fields.forEach(f -> values.put(f.at(), f.fresh()));
        return new EditRow(token + "-NEW", "", fields, values, Map.of(), "{}");
    }

    public String value(EditField field) {
        return values.getOrDefault(field.at(), "");
    }

    public boolean holds(EditField field, String choice) {
        return Arrays.asList(value(field).split(" ")).contains(choice);
    }

    /** The figure behind what is shown; nothing if that is the figure. */
    public String exact(EditField field) {
        return exact.get(field.at());
    }

    public String name() {
        return values.getOrDefault("name", "");
    }

    /** The id of a field's input. */
    public String input(EditField field) {
        return key + "-" + field.at().replace('/', '-');
    }

    /** Whether there is such a field, as the others are; {@code static/js/plans/edit-form.js} says it too. */
    public boolean asked(EditField field) {
        return field.when().isEmpty() || Arrays.stream(field.when().split("&")).allMatch(this::holds);
    }

    private boolean holds(String condition) {
        int equals = condition.indexOf('=');
        return Arrays.asList(condition.substring(equals + 1).split("\\|", -1))
                .contains(values.getOrDefault(condition.substring(0, equals), ""));
    }
}
