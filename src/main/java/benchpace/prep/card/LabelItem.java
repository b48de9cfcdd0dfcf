package benchpace.prep.card;

import java.util.Arrays;
import java.util.List;

/** What a label is checked for. Whether it applies to a class's candles is not judged here. */
public enum LabelItem {
    GIFT_OR_SALE(Weight.ASK, Provenance.PRACTICE, LabelRegion.values()),
    FIRE_WARNING_US(Weight.SHOULD, Provenance.READ, LabelRegion.UNITED_STATES),
    THREE_RULES_US(Weight.SHOULD, Provenance.MEMORY, LabelRegion.UNITED_STATES),
    WEIGHT_OR_COUNT(Weight.ASK, Provenance.READ, LabelRegion.UNITED_STATES),
    NET_QUANTITY_TWICE(Weight.MUST_WHERE_IT_APPLIES, Provenance.READ, LabelRegion.UNITED_STATES),
    NET_QUANTITY_SIZE(Weight.MUST_WHERE_IT_APPLIES, Provenance.MEMORY, LabelRegion.UNITED_STATES),
    NET_QUANTITY_PLACE(Weight.MUST_WHERE_IT_APPLIES, Provenance.MEMORY, LabelRegion.UNITED_STATES),
    IDENTITY_AND_MAKER(Weight.MUST_WHERE_IT_APPLIES, Provenance.READ, LabelRegion.UNITED_STATES),
    HAZARD_LABEL(Weight.MUST_WHERE_IT_APPLIES, Provenance.MEMORY, LabelRegion.EUROPEAN_UNION,
            LabelRegion.GREAT_BRITAIN),
    EUH208(Weight.MUST_WHERE_IT_APPLIES, Provenance.READ, LabelRegion.EUROPEAN_UNION, LabelRegion.GREAT_BRITAIN),
    UNIQUE_FORMULA(Weight.MUST_WHERE_IT_APPLIES, Provenance.MEMORY, LabelRegion.EUROPEAN_UNION),
    FIRE_WARNING_EN(Weight.SHOULD, Provenance.MEMORY, LabelRegion.EUROPEAN_UNION, LabelRegion.GREAT_BRITAIN),
    SYMBOL_SIZE_EN(Weight.SHOULD, Provenance.SECOND_HAND, LabelRegion.EUROPEAN_UNION, LabelRegion.GREAT_BRITAIN),
    NOMINAL_MARK(Weight.MUST_WHERE_IT_APPLIES, Provenance.MEMORY, LabelRegion.EUROPEAN_UNION,
            LabelRegion.GREAT_BRITAIN),
    HOW_TO_BURN(Weight.SHOULD, Provenance.MEMORY, LabelRegion.values());

    /** How much a line asks. */
    public enum Weight {
        /** Law, where it applies at all. */
        MUST_WHERE_IT_APPLIES,
        /** A standard that makers follow of their own accord. */
        SHOULD,
        /** A question that decides which of the other lines apply. */
        ASK
    }

    private final Weight weight;
    private final Provenance provenance;
    private final List<LabelRegion> regions;

    LabelItem(Weight weight, Provenance provenance, LabelRegion... regions) {
        this.weight = weight;
        this.provenance = provenance;
        this.regions = List.of(regions);
    }

    public Weight weight() {
        return weight;
    }

    public Provenance provenance() {
        return provenance;
    }

    public static List<LabelItem> of(LabelRegion region) {
        return Arrays.stream(values()).filter(item -> item.regions.contains(region)).toList();
    }
}
