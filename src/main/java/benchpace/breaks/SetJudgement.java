package benchpace.breaks;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** What the instructor's hand says of a candle. Nobody is called to trim, wrap or carry one that is not judged set. */
public sealed interface SetJudgement {
    /**
     * Still to come.
     *
     * @param finish how long it takes, once the candle is judged set, until it can be wrapped: trimming and the like
     */
    record Awaited(Duration finish) implements SetJudgement { }

    /**
     * Judged set.
     *
     * @param at       when
     * @param wrapFrom when all that comes before the wrapping is done; empty while that has not begun
     * @param finish   how long it will take
     */
    record Given(Instant at, Optional<Instant> wrapFrom, Duration finish) implements SetJudgement { }

    /** Whether the candle had been judged set by then. */
    default boolean passedBy(Instant when) {
        return this instanceof Given given && !given.at().isAfter(when);
    }

    /** How long it takes from the hand test until the candle can be wrapped. */
    default Duration finishing() {
        return this instanceof Awaited awaited ? awaited.finish() : ((Given) this).finish();
    }
}
