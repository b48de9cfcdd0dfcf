package benchpace.web.screen.plans;

import benchpace.units.MassUnit;
import benchpace.units.TemperatureUnit;
import benchpace.units.UnitChoice;
import benchpace.units.VolumeUnit;
import java.math.BigDecimal;
import java.util.List;

/**
 * One field of the page that edits a plan.
 *
 * @param at      where its value stands within the row or the section, as in the plan's JSON: {@code vessel/wallMm};
 *                one that begins with {@code _} only decides which others there are
 * @param words   its label
 * @param unit    what a number is counted in; empty if in nothing
 * @param hint    what else there is to know; may be empty
 * @param most    characters that it takes at most
 * @param choices what can be chosen; empty for what is typed
 * @param fresh   what stands in a new row
 * @param when    in which case there is such a field: {@code kind=pour|finish}; empty if always
 * @param also    other places whose problems are told here
 */
public record EditField(String at, Sort sort, String words, String unit, String hint, int most, List<Choice> choices,
                        String fresh, String when, List<String> also) {

    /** What is put in. Masses, volumes and degrees are read with the unit they are typed in. */
    public enum Sort {
        LINE, TEXT, NUMBER, MASS, VOLUME, DEGREES, CHOICE, FLAG, SEVERAL;

        /** Whether what is typed may bear its unit. */
        public boolean measured() {
            return this == MASS || this == VOLUME || this == DEGREES;
        }

        /** What plans keep such figures in; empty for what is not measured. */
        public String base() {
            return switch (this) {
                case MASS -> MassUnit.GRAM.symbol();
                case VOLUME -> VolumeUnit.MILLILITRE.symbol();
                case DEGREES -> TemperatureUnit.CELSIUS.symbol();
                default -> "";
            };
        }

        /** What a bare number is in. */
        public String unit(UnitChoice units) {
            return switch (this) {
                case MASS -> units.mass().symbol();
                case VOLUME -> units.volume().symbol();
                case DEGREES -> units.temperature().symbol();
                default -> "";
            };
        }
    }

    /** One of several. */
    public record Choice(String id, String words) { }

    public EditField {
        choices = List.copyOf(choices);
        also = List.copyOf(also);
    }

    private static EditField of(String at, Sort sort, String words, String unit, int most, List<Choice> choices) {
        return new EditField(at, sort, words, unit, "", most, choices, "", "", List.of());
    }

    static EditField line(String at, String words, int most) {
        return of(at, Sort.LINE, words, "", most, List.of());
    }

    static EditField text(String at, String words, int most) {
        return of(at, Sort.TEXT, words, "", most, List.of());
    }

    static EditField number(String at, String words, String unit) {
        return of(at, Sort.NUMBER, words, unit, 24, List.of());
    }

    /** @param sort one that is measured: its unit is the reader's own */
    static EditField measure(String at, Sort sort, String words) {
        return of(at, sort, words, "", 24, List.of());
    }

    static EditField choice(String at, String words, List<Choice> choices) {
        return of(at, Sort.CHOICE, words, "", 0, choices).fresh(choices.isEmpty() ? "" : choices.get(0).id());
    }

    static EditField flag(String at, String words) {
        return of(at, Sort.FLAG, words, "", 0, List.of());
    }

    static EditField several(String at, String words, List<Choice> choices) {
        return of(at, Sort.SEVERAL, words, "", 0, choices);
    }

    EditField fresh(String value) {
        return new EditField(at, sort, words, unit, hint, most, choices, value, when, also);
    }

    EditField hint(String said) {
        return new EditField(at, sort, words, unit, said, most, choices, fresh, when, also);
    }

    EditField when(String condition) {
        return new EditField(at, sort, words, unit, hint, most, choices, fresh, condition, also);
    }

    EditField alsoOf(String... places) {
        return new EditField(at, sort, words, unit, hint, most, choices, fresh, when, List.of(places));
    }

    EditField among(List<Choice> others) {
        return new EditField(at, sort, words, unit, hint, most, others, fresh, when, also);
    }

    /** A number without an exponent and without a nought at its end. */
    public static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** What its numbers are in. */
    public String unit(UnitChoice units) {
        return sort.measured() ? sort.unit(units) : unit;
    }

    /** Whether it only decides which other fields there are, and is no part of a plan. */
    public boolean decides() {
        return at.startsWith("_");
    }

    public boolean isText() {
        return sort == Sort.TEXT;
    }

    public boolean isChoice() {
        return sort == Sort.CHOICE;
    }

    public boolean isFlag() {
        return sort == Sort.FLAG;
    }

    public boolean isSeveral() {
        return sort == Sort.SEVERAL;
    }

    /** Whether a number is typed, with or without a unit. */
    public boolean isNumber() {
        return sort == Sort.NUMBER || sort.measured();
    }

    /** Short ones stand beside each other. */
    public boolean isWide() {
        return sort == Sort.TEXT || sort == Sort.SEVERAL;
    }

    /** The name of the sort for style sheet and script. */
    public String token() {
        return sort.name().toLowerCase(java.util.Locale.ROOT);
    }
}
