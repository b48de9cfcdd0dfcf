package benchpace.breaks;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import benchpace.plan.ActivityId;

/**
 * What the instructor's decisions, folded, say about one activity.
 *
 * @param offered   whether anybody may still be sent to it
 * @param notBefore it opens then; {@link Instant#MIN} when nobody said so
 * @param movedAt   when that was decided; {@link Instant#MAX} when it was not
 * @param begunAt   when it was started; {@link Instant#MAX} while it was not
 * @param closedAt  when it was ended or skipped; {@link Instant#MAX} while it was not
 * @param extension how much longer than planned it takes
 */
record Standing(boolean offered, Instant notBefore, Instant movedAt, Instant begunAt, Instant closedAt,
                Duration extension) {
    static final Standing AS_PLANNED =
            new Standing(true, Instant.MIN, Instant.MAX, Instant.MAX, Instant.MAX, Duration.ZERO);

    /** Whether the instructor gave it a time. */
    boolean pinned() {
        return !notBefore.equals(Instant.MIN);
    }

    /** Whether what was planned for this moment did not begin then, as it had been moved to a later time before. */
    boolean movedAwayFrom(Instant planned) {
        return !planned.isBefore(movedAt) && planned.isBefore(notBefore);
    }

    boolean begunBy(Instant now) {
        return !begunAt.isAfter(now);
    }

    static Map<ActivityId, Standing> fold(List<BreakDecision> decisions) {
        Map<ActivityId, Standing> standings = new HashMap<>();
        for (BreakDecision decision : decisions) {
            standings.merge(decision.activity(), AS_PLANNED.after(decision), (old, first) -> old.after(decision));
        }
        return standings;
    }

    /** How much longer an activity became by decisions later than an instant. */
    static Duration extensionSince(List<BreakDecision> decisions, ActivityId activity, Instant since) {
        Duration sum = Duration.ZERO;
        for (BreakDecision decision : decisions) {
            if (decision instanceof BreakDecision.Extended longer && longer.activity().equals(activity)
                    && longer.at().isAfter(since)) {
                sum = sum.plus(longer.by());
            }
        }
        return sum;
    }

    /**
     * From when on a seat may be called to this wrapping: after the hand test and what comes before the wrapping, or,
     * when the instructor started it, as soon as its candle is judged set. Empty while it may not be called.
     */
    Optional<Instant> callsFrom(HandTest handTest) {
        if (!(handTest instanceof HandTest.Passed passed)) {
            return Optional.empty();
        }
        if (begunAt.equals(Instant.MAX)) {
            return passed.wrapFrom();
        }
        Instant started = begunAt.isAfter(passed.at()) ? begunAt : passed.at();
        return Optional.of(passed.wrapFrom().filter(from -> from.isBefore(started)).orElse(started));
    }

    private Standing after(BreakDecision decision) {
        if (decision instanceof BreakDecision.Started started) {
            return new Standing(true, Instant.MIN, Instant.MAX, started.at(), Instant.MAX, extension);
        }
        if (decision instanceof BreakDecision.Extended longer) {
            return new Standing(offered, notBefore, movedAt, begunAt, closedAt, extension.plus(longer.by()));
        }
        if (decision instanceof BreakDecision.MovedTo moved) {
            return new Standing(true, moved.to(), moved.at(), begunAt, Instant.MAX, extension);
        }
        return new Standing(false, notBefore, movedAt, begunAt, decision.at(), extension);
    }
}
