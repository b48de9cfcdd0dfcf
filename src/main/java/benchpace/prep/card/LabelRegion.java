package benchpace.prep.card;

import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import java.util.Arrays;
import java.util.List;

/** Where candles are given away or sold, as far as labels there are listed here. */
public enum LabelRegion {
    UNITED_STATES,
    EUROPEAN_UNION,
    GREAT_BRITAIN;

    /** The regions that the rules of the venue's circuits point to; all if they point nowhere. */
    public static List<LabelRegion> of(Kit kit) {
        List<LabelRegion> pointed = Arrays.stream(values()).filter(region -> kit.circuits().stream()
                .anyMatch(circuit -> circuit.rule().filter(rule -> rule == region.rule()).isPresent())).toList();
        return pointed.isEmpty() ? List.of(values()) : pointed;
    }

    private Circuit.Rule rule() {
        return switch (this) {
            case UNITED_STATES -> Circuit.Rule.NORTH_AMERICA;
            case EUROPEAN_UNION -> Circuit.Rule.SCHUKO_16;
            case GREAT_BRITAIN -> Circuit.Rule.UK_13;
        };
    }
}
