package benchpace.board.prep;

import benchpace.live.LiveClass;
import benchpace.plan.Plan;
import benchpace.prep.evening.Beliefs;
import benchpace.prep.evening.Setting;
import benchpace.prep.sheet.PrepSheet;
import java.time.Duration;
import java.util.Map;

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
        return new Occasion(live.plan(), Math.max(1, live.makers()), live.candlesToMake(),
                Duration.between(live.startsAt(), live.promisedEnd()).toMillis() / 60_000.0);
    }

    /** Its evening, to be simulated. */
    public Setting setting(Beliefs beliefs) {
        return Setting.of(plan, seats, candles).withPromisedMinutes(promisedMinutes).withBeliefs(beliefs);
    }

    /** Worked out anew. @throws IllegalArgumentException if more candles are chosen than seats, or one is unknown */
    PrepSheet sheet() {
        return PrepSheet.of(plan, seats, candles, promisedMinutes);
    }
}
