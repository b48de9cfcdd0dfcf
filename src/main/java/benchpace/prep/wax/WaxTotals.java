package benchpace.prep.wax;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All wax and fragrance to melt and weigh, with the allowance for spills.
 *
 * @param waxes what of each wax, by its id, in the order of the candles
 */
public record WaxTotals(double waxGrams, double fragranceGrams, List<OfWax> waxes) {
    /** One wax, and the fragrance of the candles that are made of it. */
    public record OfWax(String wax, String name, int seats, double waxGrams, double fragranceGrams) { }

    public WaxTotals {
        waxes = List.copyOf(waxes);
    }

    /** @param spillPercent beyond what is poured, 0 or more */
    public static WaxTotals of(List<CandleLine> lines, double spillPercent) {
        double with = 1 + spillPercent / 100;
        Map<String, OfWax> waxes = new LinkedHashMap<>();
        double wax = 0;
        double fragrance = 0;
        for (CandleLine line : lines) {
            OfWax one = new OfWax(line.candle().wax().id(), line.candle().wax().name(), line.seats(),
                    line.waxGrams() * with, line.fragranceGrams() * with);
            waxes.merge(one.wax, one, (a, b) -> new OfWax(a.wax, a.name, a.seats + b.seats, a.waxGrams + b.waxGrams,
                    a.fragranceGrams + b.fragranceGrams));
            wax += one.waxGrams;
            fragrance += one.fragranceGrams;
        }
        return new WaxTotals(wax, fragrance, List.copyOf(waxes.values()));
    }
}
