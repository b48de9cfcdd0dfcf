package benchpace.prep.evening;

import java.util.List;
import java.util.Optional;

/**
 * When things happen on simulated evenings, and how likely the promise is kept. A class is <em>done</em> when every
 * seat is through with all of the plan: its candle ready if the plan has a cure, its finish steps done, and the talk at
 * the end held: when everyone can go, as the live board's home time has it, with the finish steps drawn instead of
 * planned. A plan without a cure step lets its candles set after everybody has left, and does not wait for them.
 *
 * @param evenings        how many it rests on
 * @param promisedMinutes what was promised, from the class's start
 * @param onTime          being done by then
 * @param steps           each step of the plan, in its order
 * @param done            when the class is done
 * @param lastCandle      when the last candle may be handled; empty if nothing is poured
 * @param cure            what that rests on
 */
public record Timetable(int evenings, double promisedMinutes, Chance onTime, List<StepEnd> steps, Quantiles done,
                        Optional<Quantiles> lastCandle, CureBasis cure) {
    public Timetable {
        steps = List.copyOf(steps);
    }
}
