package benchpace.live;

import java.time.Instant;
import java.util.Optional;

/**
 * What the instructor has decided about one activity tonight.
 *
 * @param openedAt        when it was opened, if it was
 * @param closedAt        when it was closed, if it was
 * @param extraMinutes    how much longer it shall go on than planned
 * @param movedTo         when it shall begin, if the instructor chose
 */
public record ActivityRun(Optional<Instant> openedAt, Optional<Instant> closedAt, int extraMinutes,
                          Optional<Instant> movedTo, boolean skipped) {

    /** Nothing decided yet. */
    public static final ActivityRun UNTOUCHED =
            new ActivityRun(Optional.empty(), Optional.empty(), 0, Optional.empty(), false);

    public boolean open() {
        return openedAt.isPresent() && closedAt.isEmpty() && !skipped;
    }

    ActivityRun opened(Instant at) {
        return new ActivityRun(Optional.of(at), Optional.empty(), extraMinutes, movedTo, false);
    }

    ActivityRun closed(Instant at) {
        return new ActivityRun(openedAt, Optional.of(at), extraMinutes, movedTo, skipped);
    }

    ActivityRun extended(int minutes) {
        return new ActivityRun(openedAt, closedAt, extraMinutes + minutes, movedTo, skipped);
    }

    ActivityRun moved(Instant to) {
        return new ActivityRun(openedAt, closedAt, extraMinutes, Optional.of(to), false);
    }

    ActivityRun skippedTonight() {
        return new ActivityRun(openedAt, closedAt, extraMinutes, movedTo, true);
    }
}
