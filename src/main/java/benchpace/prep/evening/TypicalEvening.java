package benchpace.prep.evening;

import java.util.List;

/**
 * One simulated evening, seat by seat.
 *
 * @param ends of each seat: when it is through with each step, in minutes from the class's start; at least one of both
 */
public record TypicalEvening(List<List<Double>> ends) {
    public TypicalEvening {
        ends = ends.stream().map(List::copyOf).toList();
    }

    public int seats() {
        return ends.size();
    }

    /** @param seat from 1; @param step its position in the plan, from 0 */
    public double end(int seat, int step) {
        return ends.get(seat - 1).get(step);
    }

    /** When everybody was through with everything. */
    public double minutes() {
        return ends.stream().mapToDouble(seat -> seat.get(seat.size() - 1)).max().orElseThrow();
    }
}
