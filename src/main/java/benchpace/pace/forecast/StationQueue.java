package benchpace.pace.forecast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Seats that wait for their turn at what serves a step: first come, first served, by a few stations alike. What each
 * seat waits follows from when the stations fall free, the recursion of Kiefer &amp; Wolfowitz (1955), "On the theory
 * of queues with many servers", <i>Transactions of the American Mathematical Society</i> 78, 1-18.
 *
 * <p>Whoever knows the order calls {@link #turn} seat by seat, those first that already have a station: a seat that
 * keeps it for three more minutes came now and keeps it 3. {@link #turns} puts the seats in order first.
 */
public final class StationQueue {
    /** When each station falls free, minutes. */
    private final double[] free;

    /** @param atOnce how many seats are served at once, at least 1 */
    public StationQueue(int atOnce) {
        if (atOnce < 1) {
            throw new IllegalArgumentException("a queue for " + atOnce + " stations");
        }
        free = new double[atOnce];
        clear();
    }

    /** How many there are. */
    int stations() {
        return free.length;
    }

    /** Begins anew: all stations are free. */
    void clear() {
        Arrays.fill(free, Double.NEGATIVE_INFINITY);
    }

    /**
     * When the next seat's turn begins. Seats have to be told in the order in which they come.
     *
     * @param comesMinutes when it comes, in minutes from the class's start
     * @param keepsMinutes how long it keeps its station then, at least 0
     */
    public double turn(double comesMinutes, double keepsMinutes) {
        if (!(keepsMinutes >= 0)) {
            throw new IllegalArgumentException("a station kept for " + keepsMinutes + " minutes");
        }
        int first = 0;
        for (int j = 1; j < free.length; j++) {
            first = free[j] < free[first] ? j : first;
        }
        double turn = Math.max(comesMinutes, free[first]);
        free[first] = turn + keepsMinutes;
        return turn;
    }

    /**
     * When the turn of each seat begins, minutes; of those that come together the first in the table's order is first.
     *
     * @param atOnce how many seats are served at once
     * @param comes  when each seat comes
     * @param keeps  how long each keeps its station
     */
    public static double[] turns(int atOnce, double[] comes, double[] keeps) {
        StationQueue queue = new StationQueue(atOnce);
        double[] turns = new double[comes.length];
        IntStream.range(0, comes.length).boxed().sorted(Comparator.comparing(i -> comes[i]))
                .forEach(i -> turns[i] = queue.turn(comes[i], keeps[i]));
        return turns;
    }
}
