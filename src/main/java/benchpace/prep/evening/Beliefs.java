package benchpace.prep.evening;

import benchpace.cure.room.RoomFit;
import benchpace.pace.StepPrior;
import benchpace.pace.belief.PacePriors;
import java.util.Map;

/**
 * What a class begins with.
 *
 * @param pace of steps, guests, stalls and openings
 * @param room how the place cools candles and when they count as ready there
 */
public record Beliefs(PacePriors pace, RoomFit room) {
    /** Where no class was held yet. */
    public static final Beliefs UNTAUGHT = new Beliefs(PacePriors.standard(), RoomFit.untaught());

    /** @param steps what past classes taught about the plan's steps, by step id, as the next class is judged by */
    public static Beliefs of(Map<String, StepPrior> steps, RoomFit room) {
        return new Beliefs(PacePriors.standard().withSteps(steps), room);
    }
}
