package benchpace.words.prep;

import benchpace.prep.card.DocumentItem;
import benchpace.prep.card.LabelFigures;
import benchpace.prep.card.LabelItem;
import benchpace.prep.card.LabelRegion;

/** What to check in makers' documents and on labels; a list of questions with their sources, no legal verdict. */
public final class LabelWords {
    /** Stands above every list of labels. */
    public static final String NO_VERDICT = "A list to check by, not a verdict: whether a rule applies to candles of a "
            + "class is for the authority or a lawyer of the place to say.";

    private LabelWords() { }

    public static String region(LabelRegion region) {
        return switch (region) {
            case UNITED_STATES -> "United States";
            case EUROPEAN_UNION -> "European Union";
            case GREAT_BRITAIN -> "Great Britain";
        };
    }

    /** "must, where it applies", "should", "ask first". */
    public static String weight(LabelItem.Weight weight) {
        return switch (weight) {
            case MUST_WHERE_IT_APPLIES -> "must, where it applies";
            case SHOULD -> "should";
            case ASK -> "ask first";
        };
    }

    /** One line with its weight and source. */
    public static String of(LabelItem item) {
        return text(item) + " " + Sources.of(item.provenance(), source(item));
    }

    /** "net 110 g, 3.8 oz; letters of the quantity at least 2/16 in (United States) ..." of one candle. */
    public static String of(LabelFigures figures, LabelRegion region) {
        String net = "net " + Amounts.number(figures.netTenthsOfAnOunce() / 10.0) + " oz (" + figures.netGrams() + " "
                + "g)";
        return region == LabelRegion.UNITED_STATES
                ? net + ", rounded down; letters at least " + sixteenths(figures.typeSixteenthsOfInch())
                        + " in high on a panel of " + Amounts.number(figures.panelSquareInches()) + " square inches"
                : "net " + figures.netGrams() + " g, rounded down; figures at least " + figures.markMillimetres()
                        + " mm high";
    }

    private static String sixteenths(int sixteenths) {
        return switch (sixteenths) {
            case 2 -> "1/8";
            case 4 -> "1/4";
            case 8 -> "1/2";
            default -> sixteenths + "/16";
        };
    }

    private static String text(LabelItem item) {
        return switch (item) {
            case GIFT_OR_SALE -> "Does a guest take home what the guest made, or is it given away or sold? Other rules "
                    + "hold for each.";
            case FIRE_WARNING_US -> "Fire warning: safety alert symbol, right after it WARNING in bold capitals, "
                    + "visible where it is sold, under no other sticker.";
            case THREE_RULES_US -> "Its three rules: burn within sight; keep away from things that catch fire; keep "
                    + "away from children.";
            case WEIGHT_OR_COUNT -> "Is it a container candle (net weight), or a taper or moulded one (count and "
                    + "size in inches)?";
            case NET_QUANTITY_TWICE -> "Net quantity in ounces and in grams, both rounded down.";
            case NET_QUANTITY_SIZE -> "Its letters as high as the panel asks: 1/16 in up to 5 square inches, 1/8 up "
                    + "to 25, 3/16 up to 100.";
            case NET_QUANTITY_PLACE -> "In the lower 30 % of the front, level with the base, nothing crowding it.";
            case IDENTITY_AND_MAKER -> "What it is, and name and place of the business.";
            case HAZARD_LABEL -> "Hazard label if the mixture is classified: product, supplier with address and "
                    + "telephone, quantity, pictograms, signal word, H and P statements. The load decides: work it "
                    + "out of the total.";
            case EUH208 -> "Not classified, but with a sensitising substance: \"Contains (name). May produce an "
                    + "allergic reaction.\"";
            case UNIQUE_FORMULA -> "A unique formula identifier (UFI) if it is hazardous to health or physically.";
            case FIRE_WARNING_EN -> "Fire warning: the general warning sign; never leave it burning unattended; away "
                    + "from children and pets; away from what can catch fire; distance between candles.";
            case SYMBOL_SIZE_EN -> "Its symbols at least 5 mm high; the sign's ground need not be yellow.";
            case NOMINAL_MARK -> "Figures of the quantity: 2 mm up to 50 g, 3 mm up to 200 g, 4 mm up to 1 kg, then "
                    + "6 mm.";
            case HOW_TO_BURN -> "How to burn it: trim the wick to about 6 mm (1/4 in), at most 4 hours at a time, "
                    + "stop at about 12 mm (1/2 in) of wax.";
        };
    }

    private static String source(LabelItem item) {
        return switch (item) {
            case GIFT_OR_SALE -> "";
            case FIRE_WARNING_US -> "ASTM F2058-07(2021), a standard followed of one's own accord; abstract of the "
                    + "2014 edition";
            case THREE_RULES_US -> "ASTM F2058";
            case WEIGHT_OR_COUNT -> "16 CFR 501.7";
            case NET_QUANTITY_TWICE -> "Fair Packaging and Labeling Act; FTC rule in force since 14 February 1994";
            case NET_QUANTITY_SIZE -> "16 CFR 500.21(b)";
            case NET_QUANTITY_PLACE -> "16 CFR 500.6 and 500.20";
            case IDENTITY_AND_MAKER -> "titles of 16 CFR 500.4 and 500.5";
            case HAZARD_LABEL -> "CLP Regulation (EC) 1272/2008, article 17, and as kept in Great Britain";
            case EUH208 -> "CLP Regulation, annex II 2.8";
            case UNIQUE_FORMULA -> "CLP Regulation, article 45 and annex VIII";
            case FIRE_WARNING_EN -> "EN 15494:2019; sources differ on how many signs are required";
            case SYMBOL_SIZE_EN -> "EN 15494:2019, 4.2 and 4.3, as a testing house explains it";
            case NOMINAL_MARK -> "Directive 76/211/EEC, annex I 3.1";
            case HOW_TO_BURN -> "common wording of makers";
        };
    }

    /** One thing to check in documents, with its source. */
    public static String of(DocumentItem item) {
        return text(item) + " " + Sources.of(item.provenance(), source(item));
    }

    private static String text(DocumentItem item) {
        return switch (item) {
            case WAX_DATA_SHEET -> "Wax data sheet: the most fragrance it holds and on what that is counted, pour "
                    + "temperature, melting range.";
            case CERTIFICATE_CATEGORY -> "Fragrance certificate: the line for candles, IFRA category 12. Category 11 "
                    + "is from before the 49th amendment (January 2020): ask for a new one.";
            case CERTIFICATE_AMENDMENT -> "Fragrance certificate: which amendment? The 51st was notified on 30 June "
                    + "2023; later ones are possible.";
            case CERTIFICATE_OF_TOTAL -> "Fragrance certificate: its limit is of the product as sold, all that is "
                    + "poured; convert before you compare.";
            case SAFETY_SHEET_FLASH_POINT -> "Safety data sheet: the flash point. Pouring at or above it is no ban "
                    + "but a caution.";
            case SAFETY_SHEET_CLASSIFICATION -> "Safety data sheet: classification and sensitising substances, for the "
                    + "label.";
            case WICKS_WITHOUT_LEAD -> "Wicks: no lead in the core; more than 0.06 % has been banned in the United "
                    + "States since 15 October 2003.";
            case VESSEL_FOR_CANDLES -> "Vessels: meant for candles by their maker; a drinking glass proves nothing.";
            case VENUE_ALLOWS_IT -> "Venue: hot wax and open flame allowed, circuits, water, exits, extinguisher.";
        };
    }

    private static String source(DocumentItem item) {
        return switch (item) {
            case WAX_DATA_SHEET, VENUE_ALLOWS_IT -> "";
            case CERTIFICATE_CATEGORY, CERTIFICATE_AMENDMENT -> "IFRA";
            case CERTIFICATE_OF_TOTAL -> "a fragrance database's heading of its IFRA limits";
            case SAFETY_SHEET_FLASH_POINT -> "ASTM D93, closed cup";
            case SAFETY_SHEET_CLASSIFICATION -> "CLP Regulation, annex I 3.4";
            case WICKS_WITHOUT_LEAD -> "16 CFR 1500.17(a)(13)";
            case VESSEL_FOR_CANDLES -> "ASTM F2179";
        };
    }
}
