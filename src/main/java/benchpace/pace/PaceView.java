package benchpace.pace;

import java.util.Comparator;
import java.util.List;

/**
 * The class's pace at a moment.
 *
 * @param nowMinutes the moment, from the class's start
 * @param seats every seat, in the table's order
 * @param quietMinutes since the last tap of any seat
 * @param tabletSilent whether that silence is about the tablet: say "no taps for 7 min" and flag nobody for it
 * @param nextMinutes when to look again if nothing happens before
 */
public record PaceView(double nowMinutes, List<SeatPace> seats, double quietMinutes, boolean tabletSilent,
                       double nextMinutes) {
    public PaceView {
        seats = List.copyOf(seats);
    }

    /** Flagged seats, the one first where walking over saves most. */
    public List<SeatPace> inNeed() {
        return seats.stream().filter(s -> s.level() != Level.NONE)
                .sorted(Comparator.comparing((SeatPace s) -> s.level() == Level.BEHIND ? 0 : 1)
                        .thenComparing(s -> -s.savedMinutes()).thenComparing(SeatPace::seat))
                .toList();
    }
}
