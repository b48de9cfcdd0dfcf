package benchpace.files.log;

import benchpace.pace.PaceStep;
import java.util.List;

/**
 * A class log as read: its first line, and the events after it in order of time.
 *
 * @param classId the class's id, used in the tables written
 * @param steps the plan's steps in order
 * @param cureMinutes what the plan gives the cure
 * @param places the seats as announced
 * @param events everything that happened
 */
public record ClassLog(String classId, List<PaceStep> steps, double cureMinutes, List<Place> places,
                       List<LogEvent> events) {
    public ClassLog {
        steps = List.copyOf(steps);
        places = List.copyOf(places);
        events = List.copyOf(events);
    }

    /**
     * A seat as the first line announces it.
     *
     * @param seat its number, from 1
     * @param party which party sits there
     * @param sharesCandle whether the candle is shared within the party
     * @param present whether the guest is there at the start
     */
    public record Place(int seat, int party, boolean sharesCandle, boolean present) { }
}
