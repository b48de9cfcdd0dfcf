package benchpace.board.pacing;

import java.time.Instant;
import java.util.List;

/**
 * A string-line chart of the class: time across, steps up, one line a seat, as railway timetables are drawn.
 *
 * @param from  the left edge
 * @param until the right edge; not before {@code from}
 * @param steps names of the steps that seats finish, from the bottom
 * @param lines one a seat that counts
 */
public record PaceLines(Instant from, Instant until, List<String> steps, List<Line> lines) {

    /** @param flagged whether it should stand out */
    public record Line(int seat, boolean flagged, List<Point> points) {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** @param level how many steps are done, 0 to the number of steps */
    public record Point(Instant at, int level) { }

    public static PaceLines none(Instant now) {
        return new PaceLines(now, now, List.of(), List.of());
    }

    public PaceLines {
        steps = List.copyOf(steps);
        lines = List.copyOf(lines);
    }
}
