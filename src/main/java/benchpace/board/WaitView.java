package benchpace.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The plan of the wait as screens show it.
 *
 * @param activities the plan's activities with how they stand
 */
public record WaitView(List<ActivityView> activities) {
    /** No activities. */
    public static final WaitView NONE = new WaitView(List.of());

    /** One activity tonight. @param seats who takes part, by number, as far as it was tapped */
    public record ActivityView(String id, String name, String where, boolean open, boolean skipped,
                               Optional<Instant> openedAt, List<Integer> seats) {
        public ActivityView {
            seats = List.copyOf(seats);
        }
    }

    public WaitView {
        activities = List.copyOf(activities);
    }
}
