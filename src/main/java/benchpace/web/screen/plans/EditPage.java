package benchpace.web.screen.plans;

import benchpace.files.Words;
import benchpace.units.MassUnit;
import benchpace.units.TemperatureUnit;
import benchpace.units.UnitChoice;
import benchpace.units.VolumeUnit;
import benchpace.web.screen.shell.Shell;
import java.util.List;
import java.util.Optional;

/**
 * The page on which a plan is written.
 *
 * @param planId   by which the board knows it
 * @param version  the one that is shown; 0 for a starter plan
 * @param current  the newest
 * @param standing whether it can be changed, and why not
 * @param plan     the whole of it as JSON
 */
public record EditPage(Shell shell, String planId, String name, int version, int current, Standing standing,
                       UnitChoice units, List<Section> sections, String plan) {

    /** What may be done with what is shown. */
    public enum Standing { OWN, STARTER, EARLIER }

    /**
     * A part of the page that folds: a list, or some fields.
     *
     * @param place where it stands in the plan
     * @param list  what it lists; empty if it is no list
     * @param rows  the entries, or the one row of fields
     * @param fresh an entry to begin with, where it is a list; else the same fields again
     */
    public record Section(String token, String title, String words, String place, Optional<EditKind> list,
                          List<EditRow> rows, EditRow fresh) {
        public Section {
            rows = List.copyOf(rows);
        }

        static Section of(String token, String title, String words, String place, EditRow fields) {
            return new Section(token, title, words, place, Optional.empty(), List.of(fields), fields);
        }

        static Section of(EditKind kind, List<EditRow> rows, EditRow fresh) {
            return new Section(kind.token(), kind.title(), kind.words(), kind.place(), Optional.of(kind), rows, fresh);
        }

        public boolean isList() {
            return list.isPresent();
        }

        public EditKind kind() {
            return list.orElseThrow();
        }
    }

    public EditPage {
        sections = List.copyOf(sections);
    }

    /** One of the units that the board is used in. @param measure its name; @param chosen one of the choices */
    public record Choosing(String measure, String words, String chosen, List<EditField.Choice> choices) { }

    public List<Choosing> choosing() {
        return List.of(
                new Choosing("mass", "Weights", word(units.mass()), List.of(choice(MassUnit.GRAM, "grams"),
                        choice(MassUnit.OUNCE, "ounces"))),
                new Choosing("volume", "Volumes", word(units.volume()), List.of(
                        choice(VolumeUnit.MILLILITRE, "millilitres"), choice(VolumeUnit.US_FLUID_OUNCE, "US fl oz"),
                        choice(VolumeUnit.IMPERIAL_FLUID_OUNCE, "imp fl oz"))),
                new Choosing("temperature", "Degrees", word(units.temperature()), List.of(
                        choice(TemperatureUnit.CELSIUS, "Celsius"), choice(TemperatureUnit.FAHRENHEIT, "Fahrenheit"))));
    }

    private static EditField.Choice choice(Enum<?> unit, String words) {
        return new EditField.Choice(word(unit), words);
    }

    private static String word(Enum<?> unit) {
        return Words.of(unit);
    }

    public boolean own() {
        return standing == Standing.OWN;
    }

    public boolean earlier() {
        return standing == Standing.EARLIER;
    }

    /** Beside its name. */
    public String standingWords() {
        return switch (standing) {
            case OWN -> "your plan";
            case STARTER -> "starter plan";
            case EARLIER -> "version " + version;
        };
    }

    /** Why it cannot be changed here. */
    public String standingSentence() {
        return switch (standing) {
            case OWN -> "";
            case STARTER -> "This plan comes with the board and stays as it is.";
            case EARLIER -> "This is an earlier version, to look at.";
        };
    }

    /** Beside the button that saves, at first. */
    public String stateWords() {
        return "Version " + version + ", saved.";
    }
}
