package benchpace.prep.sheet;

import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.prep.wax.AllowedLoad;
import benchpace.prep.wax.CandleLine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How many seats make which candle: as chosen, and the rest take the plan's first. */
final class CandleCounts {
    private CandleCounts() { }

    /**
     * The candles that somebody makes, in the order of the plan.
     *
     * @throws IllegalArgumentException for a candle that the plan does not have, or more choices than seats
     */
    static List<CandleLine> of(Plan plan, int seats, Map<String, Integer> chosen) {
        if (seats < 1 || seats > SeatNumber.MOST) {
            throw new IllegalArgumentException("a class has 1 to " + SeatNumber.MOST + " seats, not " + seats);
        }
        long sum = 0;
        for (Map.Entry<String, Integer> choice : chosen.entrySet()) {
            if (plan.candle(choice.getKey()).isEmpty()) {
                throw new IllegalArgumentException("the plan has no candle \"" + choice.getKey() + "\"");
            }
            if (choice.getValue() < 0) {
                throw new IllegalArgumentException("a candle is made at 0 or more seats, not " + choice.getValue());
            }
            sum += choice.getValue();
        }
        if (sum > seats) {
            throw new IllegalArgumentException("candles are chosen for " + sum + " seats, and there are " + seats);
        }
        Map<Candle, Integer> counts = new LinkedHashMap<>();
        for (Candle candle : plan.candles()) {
            int rest = counts.isEmpty() ? (int) (seats - sum) : 0;
            counts.put(candle, chosen.getOrDefault(candle.id(), 0) + rest);
        }
        AllowedLoad allowed = AllowedLoad.of(plan.kit().loads());
        return counts.entrySet().stream().filter(e -> e.getValue() > 0)
                .map(e -> new CandleLine(e.getKey(), e.getValue(), allowed.judge(e.getKey().fragranceFraction()),
                        allowed.fraction()))
                .toList();
    }
}
