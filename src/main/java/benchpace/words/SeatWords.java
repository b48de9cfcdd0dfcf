package benchpace.words;

import benchpace.board.view.SeatView.Mark;
import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import java.util.List;

/** Says how a seat stands, and where it is. */
public final class SeatWords {
    private static final int NAMED = 6;

    private SeatWords() { }

    /** "on pace", "not here yet": what goes with the shape and the colour. */
    public static String mark(Mark mark) {
        return switch (mark) {
            case ON_PACE -> "on pace";
            case EXPECTED -> "not here yet";
            case SHARING -> "shares";
            case QUEUED -> "waits its turn";
            default -> mark.token().replace('-', ' ');
        };
    }

    /** Where a seat is, seen from the instructor: "back left", "middle", "front right". */
    public static String place(SeatingChart chart, SeatNumber seat) {
        SeatingChart.Cell cell = chart.places().get(seat.value() - 1);
        String depth = third(cell.row(), chart.rows(), "back", "", "front");
        String side = third(cell.column(), chart.columns(), "left", "middle", "right");
        return (depth + " " + side).trim();
    }

    private static String third(int index, int count, String low, String middle, String high) {
        if (count < 2) {
            return middle;
        }
        double share = (double) index / (count - 1);
        return share < 1.0 / 3 ? low : share > 2.0 / 3 ? high : middle;
    }

    /** "Seats 4 and 6 are not done yet."; empty for none. */
    public static String notDone(List<Integer> seats) {
        return seats.isEmpty() ? "" : that(seats, " is", " are") + " not done yet.";
    }

    /** The seats as a sentence begins with them, and its verb: "Seat 4 has", "Seats 4 and 6 have", "9 seats have". */
    static String that(List<Integer> seats, String one, String several) {
        return Phrases.sentence(Phrases.seats(seats, NAMED)) + (seats.size() == 1 ? one : several);
    }
}
