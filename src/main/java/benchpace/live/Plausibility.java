package benchpace.live;

import java.util.Optional;

/**
 * Whether what a command says can be true of the candles on the table, which the rules ask of whoever knows wax. Pure:
 * same class and wish, same answer.
 */
@FunctionalInterface
public interface Plausibility {
    /** Where nothing is known of wax. */
    Plausibility ANYTHING = (live, wish) -> Optional.empty();

    /** Why it cannot be; empty if it can. @param wish allowed by all other rules */
    Optional<Refusal> refusal(LiveClass live, ClassEvent wish);
}
