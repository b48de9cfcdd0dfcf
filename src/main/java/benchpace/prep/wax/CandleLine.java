package benchpace.prep.wax;

import benchpace.plan.Candle;
import benchpace.plan.kit.LoadConvention;
import java.util.OptionalDouble;

/**
 * What one candle takes, spills not counted: {@code fragrance = fill x fraction}, {@code wax = fill - fragrance}.
 *
 * @param seats           that make it, 1 or more
 * @param allowedFraction the most that is allowed of all that is poured, as far as it is known
 */
public record CandleLine(Candle candle, int seats, Load load, OptionalDouble allowedFraction) {

    public double fragranceGramsPerSeat() {
        return candle.fillGrams() * candle.fragranceFraction();
    }

    public double waxGramsPerSeat() {
        return candle.fillGrams() - fragranceGramsPerSeat();
    }

    public double fragrancePercentOfWax() {
        return LoadConvention.OF_WAX.percent(candle.fragranceFraction());
    }

    public double fragrancePercentOfTotal() {
        return LoadConvention.OF_TOTAL.percent(candle.fragranceFraction());
    }

    public boolean scented() {
        return candle.fragranceFraction() > 0;
    }

    /** For all its seats, spills not counted. */
    public double waxGrams() {
        return seats * waxGramsPerSeat();
    }

    /** For all its seats, spills not counted. */
    public double fragranceGrams() {
        return seats * fragranceGramsPerSeat();
    }
}
