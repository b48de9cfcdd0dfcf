package benchpace.web.screen.cure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The form on which candles are tried out, as it was filled in.
 *
 * @param plan    the id of the plan it was filled from; empty if none
 * @param minutes how long the class waits, as typed
 * @param columns the combinations side by side
 */
public record CureForm(String plan, String room, String minutes, String minutesFault, List<Column> columns) {
    /** The fields of numbers: name, words, unit, and the step of their arrows. */
    public static final List<NumberField> NUMBERS = List.of(
            new NumberField("diameter", "Inner diameter", "mm"), new NumberField("wall", "Wall and base", "mm"),
            new NumberField("brim", "Height to the brim", "mm"),
            new NumberField("fill", "Fill, wax and fragrance", "g"),
            new NumberField("fragrance", "Fragrance, of the wax", "%"), new NumberField("room", "Room", "°C"),
            new NumberField("pour", "Pour", "°C"), new NumberField("draught", "Draught", "m/s"));

    /** A field of a number. */
    public record NumberField(String name, String words, String unit) { }

    /** One of several words. */
    public record Choice(String id, String name) { }

    /**
     * One combination.
     *
     * @param letter A to D
     * @param values as typed, by the field's name
     * @param faults what is wrong, by the field's name
     */
    public record Column(String letter, Map<String, String> values, Map<String, String> faults) {
        public Column {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
            faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults));
        }

        public String value(String field) {
            return values.getOrDefault(field, "");
        }

        public String fault(String field) {
            return faults.getOrDefault(field, "");
        }

        /** The name of a field in the address. */
        public String name(String field) {
            return letter.toLowerCase(java.util.Locale.ROOT) + "-" + field;
        }
    }

    public CureForm {
        columns = List.copyOf(columns);
    }

    public boolean sound() {
        return minutesFault.isEmpty() && columns.stream().allMatch(c -> c.faults().isEmpty());
    }
}
