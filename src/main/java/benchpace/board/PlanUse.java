package benchpace.board;

import benchpace.live.LiveClass;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When classes are held by a plan.
 *
 * @param lastRan when the latest began that was held
 * @param next    when the next is to begin, of those that are set up
 */
public record PlanUse(Optional<Instant> lastRan, Optional<Instant> next) {

    /** @param classes of whichever plans */
    public static PlanUse of(String planId, Collection<LiveClass> classes, Instant now) {
        List<LiveClass> held = classes.stream().filter(live -> live.plan().id().value().equals(planId)).toList();
        return new PlanUse(
                held.stream().filter(LiveClass::begun).map(LiveClass::startsAt).max(Comparator.naturalOrder()),
                held.stream().filter(live -> !live.begun() && live.closedAt().isEmpty()).map(LiveClass::startsAt)
                        .filter(at -> at.isAfter(now)).min(Comparator.naturalOrder()));
    }
}
