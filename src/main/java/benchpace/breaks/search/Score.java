package benchpace.breaks.search;

/**
 * How good a whole plan is; less is better, compared in this order.
 *
 * @param unplaced  class breaks that found no time
 * @param main      broken announcements, missed labels and clean-ups, total idle minutes, on one scale
 * @param mostIdle  the idle minutes of the seat that has most
 * @param changes   parts that were not in the previous plan
 */
record Score(int unplaced, long main, int mostIdle, long changes) implements Comparable<Score> {

    static Score of(int unplaced, long[] costs) {
        long sum = 0;
        int most = 0;
        for (long cost : costs) {
            sum += cost;
            most = Math.max(most, Cost.idleMinutes(cost));
        }
        return new Score(unplaced, sum / Cost.IDLE_MINUTE, most, sum % Cost.IDLE_MINUTE);
    }

    @Override public int compareTo(Score o) {
        int c = Integer.compare(unplaced, o.unplaced);
        c = c != 0 ? c : Long.compare(main, o.main);
        c = c != 0 ? c : Integer.compare(mostIdle, o.mostIdle);
        return c != 0 ? c : Long.compare(changes, o.changes);
    }

    boolean betterThan(Score other) {
        return compareTo(other) < 0;
    }
}
