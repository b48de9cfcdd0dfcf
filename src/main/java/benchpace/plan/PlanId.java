package benchpace.plan;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Names one plan in plan files, events and addresses.
 *
 * @param value lower-case letters, digits and hyphens, at most {@value #LONGEST}
 */
public record PlanId(String value) {
    /** Characters of the longest. */
    public static final int LONGEST = 40;

    /** An id made of what a plan is called: "Thursday tea lights" is {@code thursday-tea-lights}. */
    public static PlanId of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-");
        String cut = plain.substring(plain.startsWith("-") ? 1 : 0);
        cut = cut.substring(0, Math.min(LONGEST, cut.length())).replaceAll("-$", "");
        return new PlanId(cut.isEmpty() ? "plan" : cut);
    }

    public PlanId {
        Ids.checked("the id of a plan", value);
    }

    @Override public String toString() {
        return value;
    }
}
