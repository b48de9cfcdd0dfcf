package benchpace.board.prep;

import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.Plan;
import benchpace.prep.evening.Beliefs;
import benchpace.prep.evening.Setting;
import benchpace.prep.sheet.PrepSheet;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is prepared for.
 *
 * @param seats           places at which a candle is made, at least 1
 * @param candles         how many of them make which candle, by its id; the rest make the plan's first
 * @param promisedMinutes from the beginning to the end that guests were told
 */
public record Occasion(Plan plan, int seats, Map<String, Integer> candles, double promisedMinutes) {
    public Occasion {
        candles = Map.copyOf(candles);
    }

    /** A class by its plan alone. */
    public static Occasion of(Plan plan, int seats, Map<String, Integer> candles) {
        return new Occasion(plan, seats, candles, Setting.promised(plan));
    }

    /** A class as it is set up: pairs share a candle, and who has gone home makes none. */
    public static Occasion of(LiveClass live) {
        List<Seat> making = live.seats().stream().filter(s -> !s.hasLeft() && s.sharesWith().isEmpty()).toList();
        Map<String, Integer> candles = new TreeMap<>();
        making.forEach(seat -> seat.candle().filter(id -> live.plan().candle(id).isPresent())
                .ifPresent(id -> candles.merge(id, 1, Integer::sum)));
        return new Occasion(live.plan(), Math.max(1, making.size()), candles,
                Duration.between(live.startsAt(), live.promisedEnd()).toMillis() / 60_000.0);
    }

    /** Its evening, to be simulated. */
    public Setting setting(Beliefs beliefs) {
        return Setting.of(plan, seats, candles).withPromisedMinutes(promisedMinutes).withBeliefs(beliefs);
    }

    /** Worked out anew. @throws IllegalArgumentException if more candles are chosen than seats, or one is unknown */
    PrepSheet sheet() {
        return PrepSheet.of(plan, seats, candles);
    }
}
