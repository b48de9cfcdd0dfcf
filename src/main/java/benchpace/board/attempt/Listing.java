package benchpace.board.attempt;

import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import java.util.List;

/** Names several seats, or the place of one, as a person would. */
public final class Listing {
    private Listing() { }

    /** "a, b and c"; at least one. */
    static String and(List<String> things) {
        int last = things.size() - 1;
        return last == 0 ? things.get(0) : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }

    /** "Seat 4", "Seats 4 and 6", "Seats 1, 4 and 6"; more than six become a count. */
    public static String seats(List<Integer> seats) {
        if (seats.size() == 1) {
            return "Seat " + seats.get(0);
        }
        if (seats.size() > 6) {
            return seats.size() + " seats";
        }
        return "Seats " + and(seats.stream().map(String::valueOf).toList());
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
}
