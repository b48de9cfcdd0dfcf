package benchpace.prep.evening;

import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What an evening is simulated from. Every seat makes a candle of its own and its guest is there from the start.
 *
 * @param seats           how many, 1 to {@link SeatNumber#MOST}
 * @param candles         what each seat makes, an id of the plan's a seat; empty if the plan names none
 * @param promisedMinutes when it should be done, minutes from the class's start; above 0
 * @param beliefs         what is believed of its steps and its room
 */
public record Setting(Plan plan, int seats, List<String> candles, double promisedMinutes, Beliefs beliefs) {
    public Setting {
        new SeatNumber(seats);
        candles = List.copyOf(candles);
        if (candles.size() != (plan.candles().isEmpty() ? 0 : seats)) {
            throw new IllegalArgumentException(candles.size() + " candles for " + seats + " seats");
        }
        for (String candle : candles) {
            if (plan.candle(candle).isEmpty()) {
                throw new IllegalArgumentException("the plan has no candle \"" + candle + "\"");
            }
        }
        if (!(promisedMinutes > 0)) {
            throw new IllegalArgumentException("a promise of " + promisedMinutes + " minutes");
        }
    }

    /** All seats make the plan's first candle; promised is what the plan promises; nothing was learned yet. */
    public static Setting of(Plan plan, int seats) {
        return of(plan, seats, Map.of());
    }

    /**
     * Promised is what the plan promises; nothing was learned yet.
     *
     * @param candles how many seats make each, by candle id; the others make the plan's first
     */
    public static Setting of(Plan plan, int seats, Map<String, Integer> candles) {
        return new Setting(plan, seats, choices(plan, seats, candles), promised(plan), Beliefs.UNTAUGHT);
    }

    /** What the plan promises, minutes. */
    public static double promised(Plan plan) {
        return plan.promised().toMillis() / 60_000.0;
    }

    private static List<String> choices(Plan plan, int seats, Map<String, Integer> candles) {
        List<String> choices = new ArrayList<>();
        for (Candle candle : plan.candles()) {
            for (int i = candles.getOrDefault(candle.id(), 0); i > 0; i--) {
                choices.add(candle.id());
            }
        }
        if (choices.size() > seats) {
            throw new IllegalArgumentException(choices.size() + " candles are chosen for " + seats + " seats");
        }
        while (!plan.candles().isEmpty() && choices.size() < seats) {
            choices.add(plan.candles().get(0).id());
        }
        return choices;
    }

    public Setting withPlan(Plan other) {
        return new Setting(other, seats, candles, promisedMinutes, beliefs);
    }

    /** Other seats; the last ones go, or make the plan's first candle. */
    public Setting withSeats(int other) {
        List<String> choices = new ArrayList<>(candles.subList(0, Math.min(other, candles.size())));
        while (!plan.candles().isEmpty() && choices.size() < other) {
            choices.add(plan.candles().get(0).id());
        }
        return new Setting(plan, other, choices, promisedMinutes, beliefs);
    }

    public Setting withCandles(List<String> others) {
        return new Setting(plan, seats, others, promisedMinutes, beliefs);
    }

    public Setting withPromisedMinutes(double minutes) {
        return new Setting(plan, seats, candles, minutes, beliefs);
    }

    public Setting withBeliefs(Beliefs others) {
        return new Setting(plan, seats, candles, promisedMinutes, others);
    }
}
