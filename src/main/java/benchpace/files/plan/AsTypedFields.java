package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.AsTyped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The part {@code asTyped} of an object of a plan: what somebody typed for figures that stand beside it. */
final class AsTypedFields {
    static final String NAME = "asTyped";

    private AsTypedFields() { }

    /** @param figures the figures of that object that may be kept as typed */
    static Optional<AsTyped> read(Fields fields, List<String> figures) {
        return fields.has(NAME) ? fields.inner(NAME).flatMap(inner -> texts(inner, figures)) : Optional.empty();
    }

    private static Optional<AsTyped> texts(Fields typed, List<String> figures) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String figure : figures) {
            if (typed.has(figure)) {
                typed.line(figure, 1, AsTyped.LONGEST).ifPresent(text -> texts.put(figure, text));
            }
        }
        typed.noOthers();
        return typed.sound() ? Optional.of(new AsTyped(texts)) : Optional.empty();
    }
}
