package benchpace.breaks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares the places among the seats: builds a plan seat by seat, each seat's strip being the best possible with what
 * is left, from several orders of seats; then takes back one or two seats at a time and gives them new strips while
 * that helps. Each seat's best strip on its own is a bound from below; a plan that reaches the sum of the bounds is
 * proven best, otherwise {@link ExactSearch} goes on where the class is small. Bounded by counted work, not by time:
 * the same problem always gives the same plan.
 */
final class PlanSearch {
    /** Up to this many seats the exact search is worth starting. */
    static final int SMALL = 8;
    /** How many transitions of strip searches improving may take; about 20 ms on a small computer. */
    private static final long MOST_WORK = 900_000;
    private static final int SAMPLE = 10;

    private final Timeline line;
    private final BreakTimes times;
    private final StripSearch search;
    private boolean proven;

    PlanSearch(Timeline line) {
        this.line = line;
        this.times = new BreakTimes(line);
        this.search = new StripSearch(line);
    }

    /** The best plan found. */
    Draft best() {
        boolean small = line.lanes.size() <= SMALL;
        List<int[]> combinations = times.combinations(!small);
        boolean complete = times.complete(combinations);
        int[] chosen = combinations.size() == 1 ? combinations.get(0) : leastBound(combinations);
        Draft draft = share(chosen);
        proven = complete && combinations.size() == 1 && reachesBounds(draft);
        if (small && !proven) {
            ExactSearch exact = new ExactSearch(line, times, draft);
            draft = exact.search(combinations);
            proven = complete && exact.finished();
        }
        return draft;
    }

    boolean proven() {
        return proven;
    }

    private int[] leastBound(List<int[]> combinations) {
        int[] best = combinations.get(0);
        long least = Long.MAX_VALUE;
        int step = Math.max(1, line.lanes.size() / SAMPLE);
        for (int[] starts : combinations) {
            boolean[][] blocked = Draft.blocked(line, times, starts);
            Places places = line.placesNow();
            long sum = 0;
            for (int i = 0; i < line.lanes.size(); i += step) {
                search.begin(line.lanes.get(i), places, blocked[i]);
                sum += search.best();
            }
            if (sum < least) {
                least = sum;
                best = starts;
            }
        }
        return best;
    }

    private boolean reachesBounds(Draft draft) {
        long[] bounds = bounds(Draft.blocked(line, times, draft.breakStarts));
        return draft.score().main() == Score.of(0, bounds).main();
    }

    private long[] bounds(boolean[][] blocked) {
        Places places = line.placesNow();
        long[] bounds = new long[line.lanes.size()];
        for (int i = 0; i < bounds.length; i++) {
            search.begin(line.lanes.get(i), places, blocked[i]);
            bounds[i] = search.best();
        }
        return bounds;
    }

    /** The best strips found for given starts of the class breaks. */
    Draft share(int[] breakStarts) {
        boolean[][] blocked = Draft.blocked(line, times, breakStarts);
        long[] bounds = bounds(blocked);
        long goal = Score.of(0, bounds).main();
        long stopAt = search.work + MOST_WORK;
        Draft best = null;
        for (Order order : Order.values()) {
            Draft draft = improve(build(order, breakStarts, blocked), blocked, bounds, stopAt);
            best = best == null || draft.score().betterThan(best.score()) ? draft : best;
            if (best.score().main() == goal || search.work > stopAt) {
                break;
            }
        }
        return best;
    }

    /** In which order seats choose when a plan is built. */
    private enum Order { AS_BEFORE, FIRST_READY, TIGHTEST, FIRST_FREE }

    private Draft build(Order order, int[] breakStarts, boolean[][] blocked) {
        Draft draft = new Draft(breakStarts, line.lanes.size());
        Places places = line.placesNow();
        int[][] kept = reserve(places, blocked, order == Order.AS_BEFORE);
        for (int i : inOrder(order)) {
            places.giveBack(kept[i]);
            choose(i, draft, places, blocked);
        }
        return draft;
    }

    private List<Integer> inOrder(Order order) {
        Comparator<Integer> by = Comparator.comparingInt((Integer i) -> switch (order) {
            case AS_BEFORE, FIRST_READY -> line.lanes.get(i).until();
            case TIGHTEST -> Math.min(line.lanes.get(i).mustEndBy(), line.lanes.get(i).until())
                    - line.lanes.get(i).from();
            case FIRST_FREE -> line.lanes.get(i).from();
        });
        return IntStream.range(0, line.lanes.size()).boxed().sorted(by.thenComparing(i -> i)).toList();
    }

    /** Holds the places of what was announced, or of the whole previous plan, until the seat itself chooses. */
    private int[][] reserve(Places places, boolean[][] blocked, boolean allOfIt) {
        int[][] kept = new int[line.lanes.size()][];
        for (int round = 0; round < (allOfIt ? 2 : 1); round++) {
            for (int i = 0; i < kept.length; i++) {
                Lane lane = line.lanes.get(i);
                search.begin(lane, places, blocked[i]);
                List<Integer> parts = new ArrayList<>();
                for (int k = 0; k < line.tasks.size(); k++) {
                    int length = line.tasks.get(k).shortest();
                    for (int slot : round == 0 ? lane.told()[k] : lane.before()[k]) {
                        if (search.fits(k, slot, length) && (round == 0 || !lane.isTold(k, slot))) {
                            parts.add(Part.of(k, slot, slot + length));
                        }
                    }
                }
                int[] more = parts.stream().mapToInt(Integer::intValue).toArray();
                places.take(more);
                kept[i] = round == 0 ? more : IntStream.concat(IntStream.of(kept[i]), IntStream.of(more)).toArray();
            }
        }
        return kept;
    }

    private void choose(int i, Draft draft, Places places, boolean[][] blocked) {
        search.begin(line.lanes.get(i), places, blocked[i]);
        draft.costs[i] = search.best();
        draft.strips[i] = search.bestStrip();
        places.take(draft.strips[i]);
    }

    private Draft improve(Draft draft, boolean[][] blocked, long[] bounds, long stopAt) {
        Places places = line.placesNow();
        for (int[] strip : draft.strips) {
            places.take(strip);
        }
        boolean better = true;
        while (better && search.work < stopAt) {
            better = false;
            for (int i : byCost(draft)) {
                if (draft.costs[i] <= bounds[i] || search.work >= stopAt) {
                    continue;
                }
                better |= alone(i, draft, places, blocked) || withAnother(i, draft, places, blocked, bounds, stopAt);
            }
        }
        return draft;
    }

    private List<Integer> byCost(Draft draft) {
        return IntStream.range(0, draft.costs.length).boxed()
                .sorted(Comparator.comparingLong((Integer i) -> -draft.costs[i]).thenComparing(i -> i)).toList();
    }

    private boolean alone(int i, Draft draft, Places places, boolean[][] blocked) {
        long before = draft.costs[i];
        places.giveBack(draft.strips[i]);
        choose(i, draft, places, blocked);
        return draft.costs[i] < before;
    }

    private boolean withAnother(int i, Draft draft, Places places, boolean[][] blocked, long[] bounds, long stopAt) {
        for (int j = 0; j < draft.costs.length && search.work < stopAt && draft.costs[i] > bounds[i]; j++) {
            if (j == i || draft.strips[j].length == 0) {
                continue;
            }
            int[][] strips = {draft.strips[i], draft.strips[j]};
            long[] costs = {draft.costs[i], draft.costs[j]};
            places.giveBack(strips[0]);
            places.giveBack(strips[1]);
            choose(i, draft, places, blocked);
            choose(j, draft, places, blocked);
            Score now = Score.of(0, new long[] {draft.costs[i], draft.costs[j]});
            if (now.betterThan(Score.of(0, costs))) {
                return true;
            }
            places.giveBack(draft.strips[i]);
            places.giveBack(draft.strips[j]);
            put(i, strips[0], costs[0], draft, places);
            put(j, strips[1], costs[1], draft, places);
        }
        return false;
    }

    private static void put(int i, int[] strip, long cost, Draft draft, Places places) {
        draft.strips[i] = strip;
        draft.costs[i] = cost;
        places.take(strip);
    }
}
