package benchpace.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What somebody typed for figures that are kept in grams, millilitres or degrees Celsius: "8 oz" beside the 226.8 g
 * that it means. Whoever typed ounces reads those ounces again, and no rounding creeps in. The figure counts, not the
 * text.
 *
 * @param texts by the name of the figure, as plan files call it ({@code fillGrams}); each one line, not blank, at most
 *              {@value #LONGEST} characters; at most {@value #MOST}
 */
public record AsTyped(Map<String, String> texts) {
    public static final int LONGEST = 40;
    public static final int MOST = 12;
    /** Nothing but the figures. */
    public static final AsTyped NONE = new AsTyped(Map.of());

    public AsTyped {
        Texts.present("what was typed", texts);
        if (texts.size() > MOST) {
            throw new IllegalArgumentException("at most " + MOST + " figures are kept as they were typed");
        }
        texts.forEach((field, text) -> {
            Texts.required("the name of a figure", field, LONGEST);
            Texts.required("what was typed for " + Texts.shown(field), text, LONGEST);
        });
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** What was typed for that figure, if it is kept. */
    public Optional<String> text(String field) {
        return Optional.ofNullable(texts.get(field));
    }
}
