package benchpace.prep.evening;

import benchpace.plan.StepId;
import java.util.Optional;

/**
 * When the last seat is through with a step.
 *
 * @param ends        minutes from the class's start; for the cure, when every candle may be handled and everybody is
 *                    done with what came before
 * @param longestWait where seats wait for their turn at a station: how long the one does that waits longest, minutes
 */
public record StepEnd(StepId step, Quantiles ends, Optional<Quantiles> longestWait) { }
