package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.AsTyped;
import benchpace.units.Typed;
import benchpace.units.UnitChoice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The part {@code asTyped} of an object of a plan: what somebody typed for figures that stand beside it. A text that
 * does not mean the figure beside it is told of, lest one plan say two things.
 */
final class AsTypedFields {
    static final String NAME = "asTyped";
    /** In grams, millilitres, degrees or watts: what a file rounds away that gives one decimal. */
    private static final double ROUNDED_AWAY = 0.05;

    private AsTypedFields() { }

    /** @param figures the figures of that object that may be kept as typed */
    static Optional<AsTyped> read(Fields fields, List<String> figures) {
        return fields.has(NAME) ? fields.inner(NAME).flatMap(inner -> texts(inner, fields, figures))
                : Optional.empty();
    }

    private static Optional<AsTyped> texts(Fields typed, Fields beside, List<String> figures) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String figure : figures) {
            if (typed.has(figure)) {
                typed.line(figure, 1, AsTyped.LONGEST).ifPresent(text -> {
                    compare(text, figure, typed, beside);
                    texts.put(figure, text);
                });
            }
        }
        typed.noOthers();
        return typed.sound() ? Optional.of(new AsTyped(texts)) : Optional.empty();
    }

    private static void compare(String text, String figure, Fields typed, Fields beside) {
        Optional<Double> kept = beside.glimpseNumber(figure);
        if (kept.isEmpty()) {
            typed.tell(figure, "there is no " + figure + " here that it could be");
            return;
        }
        try {
            double meant = meaning(figure, text);
            if (!(Math.abs(meant - kept.get()) <= ROUNDED_AWAY + 1e-9 * Math.abs(meant))) {
                typed.tell(figure, "\"" + Fields.shorter(text) + "\" is " + meant + ", and " + figure + " is "
                        + kept.get() + ": leave the text out, or let both say the same");
            }
        } catch (IllegalArgumentException unreadable) {
            typed.tell(figure, unreadable.getMessage());
        }
    }

    /** What the name of a figure ends with says in what it is kept. */
    private static double meaning(String figure, String text) {
        if (figure.endsWith("Grams")) {
            return Typed.mass(text, UnitChoice.METRIC).value();
        }
        if (figure.endsWith("Millilitres")) {
            return Typed.volume(text, UnitChoice.METRIC).value();
        }
        return (figure.endsWith("Celsius") ? Typed.temperature(text, UnitChoice.METRIC)
                : Typed.watts(text, UnitChoice.METRIC)).value();
    }
}
