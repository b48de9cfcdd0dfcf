package benchpace.plan.kit;

import benchpace.plan.AsTyped;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the makers' documents allow of fragrance, as typed from them.
 *
 * @param convention                what {@code waxMakerPercent} is counted on
 * @param waxMakerPercent           most that the wax maker's data sheet allows, above 0 and at most 100
 * @param certificatePercentOfTotal most that the fragrance's certificate allows for candles, always of all that is
 *                                  poured; above 0 and at most 100
 * @param flashPointCelsius         of the fragrance, from its safety data sheet, -50 to 400
 * @param asTyped                   of {@code flashPointCelsius}
 */
public record Loads(Optional<LoadConvention> convention, OptionalDouble waxMakerPercent,
                    OptionalDouble certificatePercentOfTotal, OptionalDouble flashPointCelsius, AsTyped asTyped) {
    public static final Loads NONE = new Loads(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty());

    public Loads {
        waxMakerPercent.ifPresent(p -> percent("the wax maker's limit", p));
        certificatePercentOfTotal.ifPresent(p -> percent("the certificate's limit", p));
        flashPointCelsius.ifPresent(c -> Figures.within("the flash point", c, -50, 400, "°C"));
    }

    /** With nothing kept as it was typed. */
    public Loads(Optional<LoadConvention> convention, OptionalDouble waxMakerPercent,
                 OptionalDouble certificatePercentOfTotal, OptionalDouble flashPointCelsius) {
        this(convention, waxMakerPercent, certificatePercentOfTotal, flashPointCelsius, AsTyped.NONE);
    }

    private static void percent(String what, double value) {
        Figures.within(what, value, 0.001, 100, "%");
    }
}
