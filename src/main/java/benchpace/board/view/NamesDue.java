package benchpace.board.view;

import java.time.Instant;
import java.util.List;

/** A class that is over and whose guests are not forgotten yet. @param at when they will be; it may be past */
public record NamesDue(String classId, String name, Instant at) {

    /**
     * What a number of days comes to.
     *
     * @param now   those whose time is over already, the first to go first
     * @param later those whose time comes, in that order
     */
    public record Outlook(List<NamesDue> now, List<NamesDue> later) {
        public Outlook {
            now = List.copyOf(now);
            later = List.copyOf(later);
        }
    }
}
