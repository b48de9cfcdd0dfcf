package benchpace.prep.supply;

import benchpace.prep.wax.CandleLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies at each place of those who make one candle.
 *
 * @param candle   what they make; absent if the plan names none
 * @param places   how many such places there are
 * @param supplies that lie there, {@code supply().perSeat()} of each
 */
public record PlaceSetting(Optional<CandleLine> candle, int places, List<SupplyLine> supplies) {
    public PlaceSetting {
        supplies = List.copyOf(supplies);
    }

    public static List<PlaceSetting> of(int seats, List<CandleLine> candles, List<SupplyLine> supplies) {
        List<SupplyLine> there = supplies.stream().filter(s -> s.supply().perSeat() > 0).toList();
        if (candles.isEmpty()) {
            return List.of(new PlaceSetting(Optional.empty(), seats, there));
        }
        List<PlaceSetting> places = new ArrayList<>();
        candles.forEach(c -> places.add(new PlaceSetting(Optional.of(c), c.seats(), there)));
        return places;
    }
}
