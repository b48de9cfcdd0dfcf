package benchpace.breaks;

import java.util.Arrays;
import java.util.List;

/**
 * Branch and bound for small classes: seat after seat, every strip the rules allow, cut off as soon as what is fixed
 * plus each remaining seat's best strip on its own cannot beat the best plan known. Finds the best plan or, when the
 * counted work runs out, leaves the best known.
 */
final class ExactSearch {
    private static final long MOST_WORK = 60_000;

    private final Timeline line;
    private final BreakTimes times;
    private final StripSearch[] searches;
    private Schedule best;
    private Score bestScore;
    private Schedule current;
    private boolean[][] blocked;
    private Capacity places;
    private long steps;

    ExactSearch(Timeline line, BreakTimes times, Schedule known) {
        this.line = line;
        this.times = times;
        this.best = known;
        this.bestScore = known.score();
        this.searches = new StripSearch[line.windows.size()];
        for (int i = 0; i < searches.length; i++) {
            searches[i] = new StripSearch(line);
        }
    }

    /** Goes through all combinations of class-break starts. */
    Schedule search(List<int[]> combinations) {
        for (int[] starts : combinations) {
            current = new Schedule(starts, line.windows.size());
            blocked = Schedule.blocked(line, times, starts);
            places = line.placesNow();
            place(0);
        }
        return best;
    }

    /** Whether nothing was left out for want of work. */
    boolean finished() {
        return work() <= MOST_WORK && Arrays.stream(searches).noneMatch(StripSearch::cutShort);
    }

    private long work() {
        long sum = steps;
        for (StripSearch search : searches) {
            sum += search.work;
        }
        return sum;
    }

    private void place(int i) {
        if (i == searches.length) {
            Score score = current.score();
            if (score.betterThan(bestScore)) {
                bestScore = score;
                best = current.copy();
            }
            return;
        }
        for (int j = i; j < searches.length; j++) {
            searches[j].begin(line.windows.get(j), places, blocked[j]);
            current.costs[j] = searches[j].best();
        }
        if (!current.score().aimsBetterThan(bestScore) || !finished()) {
            return;
        }
        long[] bounds = current.costs.clone();
        SeatWindow window = line.windows.get(i);
        extend(i, window.from(), searches[i].firstState(), Cost.BROKEN_ANNOUNCEMENT * window.toldCount(), new int[0]);
        System.arraycopy(bounds, 0, current.costs, 0, bounds.length);
    }

    /** Stops the strip of window i here, and then tries every part that may come next. */
    private void extend(int i, int t, long state, long spent, int[] strip) {
        steps += 4;
        StripSearch search = searches[i];
        if (!promising(i, spent + search.bestFrom(t, state))) {
            return;
        }
        long stopping = spent + search.costOfStopping(t, state);
        if (promising(i, stopping)) {
            settle(i, stopping, strip);
        }
        for (int k = 0; k < line.tasks.size(); k++) {
            if (!search.mayBegin(state, k)) {
                continue;
            }
            Task task = line.tasks.get(k);
            long next = StripSearch.after(state, k);
            for (int start = t; start + task.shortest() <= line.windows.get(i).until(); start++) {
                for (int length = task.length(); length >= task.shortest(); length--) {
                    if (search.fits(k, start, length)) {
                        long cost = spent + Cost.IDLE_MINUTE * search.idle(t, start) + search.startCost(k, start);
                        int[] longer = Arrays.copyOf(strip, strip.length + 1);
                        longer[strip.length] = Booking.of(k, start, start + length);
                        extend(i, start + length, next, cost, longer);
                    }
                }
            }
        }
    }

    private boolean promising(int i, long cost) {
        if (!finished()) {
            return false;
        }
        current.costs[i] = cost;
        return current.score().aimsBetterThan(bestScore);
    }

    /** Fixes a strip of window i and goes on to the next window. */
    private void settle(int i, long cost, int[] strip) {
        current.costs[i] = cost;
        current.strips[i] = strip;
        places.take(strip);
        long[] bounds = current.costs.clone();
        place(i + 1);
        System.arraycopy(bounds, 0, current.costs, 0, bounds.length);
        places.giveBack(strip);
    }
}
