package benchpace.board;

import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import java.util.List;
import java.util.stream.Collectors;

/** Names several seats, or the place of one, as a person would. */
final class Listing {
    private Listing() { }

    /** "Seat 4", "Seats 4 and 6", "Seats 1, 4 and 6"; more than six become a count. */
    static String seats(List<Integer> seats) {
        if (seats.size() == 1) {
            return "Seat " + seats.get(0);
        }
        if (seats.size() > 6) {
            return seats.size() + " seats";
        }
        String first = seats.subList(0, seats.size() - 1).stream().map(String::valueOf)
                .collect(Collectors.joining(", "));
        return "Seats " + first + " and " + seats.get(seats.size() - 1);
    }

    /** Where a seat is, seen from the instructor: "back left", "middle", "front right". */
    static String place(SeatingChart chart, SeatNumber seat) {
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
