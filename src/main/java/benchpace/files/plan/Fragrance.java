package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.plan.kit.LoadConvention;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * The fragrance of a candle in a file: {@code fragrancePercentOfWax}, {@code fragrancePercentOfTotal}, or the share
 * itself, {@code fragranceFraction}, with the convention that its maker reckons in.
 *
 * @param fraction share of all that is poured, 0 to 0.25
 */
record Fragrance(double fraction, LoadConvention convention) {
    private static final String OF_WAX = "fragrancePercentOfWax";
    private static final String OF_TOTAL = "fragrancePercentOfTotal";
    private static final String FRACTION = "fragranceFraction";
    private static final String CONVENTION = "fragranceConvention";
    private static final double MOST = 0.25;
    private static final double MOST_PERCENT_OF_WAX = 100.0 / 3;

    /** One of the three; what a file says twice is told of. */
    static Optional<Fragrance> read(Fields fields) {
        List<String> said = List.of(OF_WAX, OF_TOTAL, FRACTION).stream().filter(fields::has).toList();
        said.stream().skip(1).forEach(again ->
                fields.tell(again, "says the same as " + said.get(0) + ": give one of them"));
        String how = said.isEmpty() ? OF_WAX : said.get(0);
        return switch (how) {
            case OF_WAX -> percent(fields, OF_WAX, MOST_PERCENT_OF_WAX, LoadConvention.OF_WAX);
            case OF_TOTAL -> percent(fields, OF_TOTAL, 100 * MOST, LoadConvention.OF_TOTAL);
            default -> fraction(fields);
        };
    }

    /** The largest percentage is a third, which has no last digit: its share is not let run over for that. */
    private static Optional<Fragrance> percent(Fields fields, String field, double most, LoadConvention convention) {
        return fields.number(field, 0, most)
                .map(percent -> new Fragrance(Math.min(MOST, convention.fractionOfTotal(percent)), convention));
    }

    private static Optional<Fragrance> fraction(Fields fields) {
        Optional<LoadConvention> convention = fields.choice(CONVENTION, LoadConvention.class, LoadConvention.OF_WAX);
        return fields.number(FRACTION, 0, MOST).flatMap(share -> convention.map(c -> new Fragrance(share, c)));
    }

    /** In the maker's per cent if that reads back as the very same share, which few odd numbers do not. */
    void write(ObjectNode node) {
        double exact = convention.percent(fraction);
        for (double percent : new double[] {Math.rint(exact * 1e6) / 1e6, exact}) {
            if (convention.fractionOfTotal(percent) == fraction) {
                Numbers.put(node, convention == LoadConvention.OF_WAX ? OF_WAX : OF_TOTAL, percent);
                return;
            }
        }
        node.put(FRACTION, fraction).put(CONVENTION, Words.of(convention));
    }
}
