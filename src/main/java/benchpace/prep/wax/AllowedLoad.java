package benchpace.prep.wax;

import benchpace.plan.kit.Loads;
import benchpace.prep.Figure;
import benchpace.prep.Whole;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How much fragrance the makers' documents allow: the smaller of the wax maker's limit (in its convention) and the
 * certificate's (always of the total), both as a share of all that is poured.
 */
public record AllowedLoad(OptionalDouble byWaxMaker, OptionalDouble byCertificate, List<Figure> wanting) {
    public AllowedLoad {
        wanting = List.copyOf(wanting);
    }

    public static AllowedLoad of(Loads loads) {
        List<Figure> wanting = new ArrayList<>();
        if (loads.waxMakerPercent().isEmpty()) {
            wanting.add(Figure.WAX_MAKER_LIMIT);
        } else if (loads.convention().isEmpty()) {
            wanting.add(Figure.LOAD_CONVENTION);
        }
        if (loads.certificatePercentOfTotal().isEmpty()) {
            wanting.add(Figure.CERTIFICATE_LIMIT);
        }
        OptionalDouble maker = loads.convention().isPresent() && loads.waxMakerPercent().isPresent()
                ? OptionalDouble.of(loads.convention().get().fractionOfTotal(loads.waxMakerPercent().getAsDouble()))
                : OptionalDouble.empty();
        OptionalDouble certificate = loads.certificatePercentOfTotal().isPresent()
                ? OptionalDouble.of(loads.certificatePercentOfTotal().getAsDouble() / 100) : OptionalDouble.empty();
        return new AllowedLoad(maker, certificate, wanting);
    }

    /** The smaller of the limits that are known, as a share of all that is poured. */
    public OptionalDouble fraction() {
        return Stream.of(byWaxMaker, byCertificate).flatMapToDouble(OptionalDouble::stream).min();
    }

    /** @param fraction of all that is poured */
    public Load judge(double fraction) {
        if (fraction().isPresent() && Whole.over(fraction, fraction().getAsDouble())) {
            return Load.OVER;
        }
        return wanting.isEmpty() ? Load.ALLOWED : Load.UNKNOWN;
    }
}
