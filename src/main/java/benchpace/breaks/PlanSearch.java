package benchpace.breaks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Shares the places among the seats: builds a plan seat by seat, each seat's strip being the best possible with what
 * is left, again and again from better orders of seats; then takes back one or two seats at a time and gives them new
 * strips while that helps. Each seat's best strip on its own is a bound from below; a plan that reaches the sum of the
 * bounds is
 * proven best, otherwise {@link ExactSearch} goes on where the class is small. Bounded by counted work, not by time:
 * the same problem always gives the same plan.
 */
final class PlanSearch {
    /** Up to this many seats the exact search is worth starting. */
    static final int SMALL = 8;
    /** The work, as {@link StripSearch#work} counts it, that building and improving may take. */
    private static final long MOST_WORK = 80_000;
    /** The share of it that may go into building; the rest is for improving the best plan built. */
    private static final double BUILDING = 0.6;
    private static final int SAMPLE = 10;
    private static final int BUILT_AT_MOST = 8;

    private final Timeline line;
    private final BreakTimes times;
    private final StripSearch search;
    private final boolean small;
    private boolean proven;

    PlanSearch(Timeline line) {
        this.line = line;
        this.times = new BreakTimes(line);
        this.small = line.lanes.size() <= SMALL;
        this.search = new StripSearch(line, false);
    }

    /** The best plan found. */
    Draft best() {
        List<int[]> combinations = times.combinations(!small);
        boolean complete = times.complete(combinations);
        Draft draft = combinations.size() == 1 ? share(combinations.get(0), MOST_WORK) : bestOf(combinations);
        if (draft.score().main() > 0 || draft.score().unplaced() > 0) {
            Draft unplanned = FirstComeFirstServed.draft(line, times);
            boolean[][] blocked = Draft.blocked(line, times, unplanned.breakStarts);
            Draft other = improve(unplanned.copy(), blocked, bounds(search, blocked), search.work + MOST_WORK / 4);
            draft = Stream.of(draft, other, unplanned).min(Comparator.comparing(Draft::score)).orElseThrow();
        }
        Score score = draft.score();
        boolean nothingToGain = score.unplaced() == 0 && score.main() == 0;
        proven = nothingToGain || complete && combinations.size() == 1 && reachesBounds(draft);
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

    /** Builds a plan for the starts whose bounds promise most, and shares the places well for the best two. */
    private Draft bestOf(List<int[]> combinations) {
        return promising(combinations).stream().map(this::buildOnce).sorted(Comparator.comparing(Draft::score))
                .limit(2).map(d -> share(d.breakStarts, MOST_WORK / 2))
                .min(Comparator.comparing(Draft::score)).orElseThrow();
    }

    private Draft buildOnce(int[] starts) {
        return build(Order.AS_BEFORE, inOrder(Order.AS_BEFORE), starts, Draft.blocked(line, times, starts));
    }

    private List<int[]> promising(List<int[]> combinations) {
        record Bound(int[] starts, long least) { }
        int step = Math.max(1, line.lanes.size() / SAMPLE);
        Places places = line.placesNow();
        List<Bound> all = new ArrayList<>();
        for (int[] starts : combinations) {
            boolean[][] blocked = Draft.blocked(line, times, starts);
            long sum = 0;
            for (int i = 0; i < line.lanes.size(); i += step) {
                search.begin(line.lanes.get(i), places, blocked[i]);
                sum += search.best();
            }
            all.add(new Bound(starts, sum));
        }
        long least = all.stream().mapToLong(Bound::least).min().orElseThrow();
        List<Bound> good = all.stream().filter(b -> b.least() - least < Cost.IDLE_MINUTE * SAMPLE).toList();
        int each = (good.size() + BUILT_AT_MOST - 1) / BUILT_AT_MOST;
        return IntStream.range(0, good.size()).filter(i -> i % each == 0).mapToObj(i -> good.get(i).starts()).toList();
    }

    private boolean reachesBounds(Draft draft) {
        StripSearch exact = new StripSearch(line);
        long[] bounds = bounds(exact, Draft.blocked(line, times, draft.breakStarts));
        return !exact.cutShort() && draft.score().main() == Score.of(0, bounds).main();
    }

    private long[] bounds(StripSearch search, boolean[][] blocked) {
        Places places = line.placesNow();
        long[] bounds = new long[line.lanes.size()];
        for (int i = 0; i < bounds.length; i++) {
            search.begin(line.lanes.get(i), places, blocked[i]);
            bounds[i] = search.best();
        }
        return bounds;
    }

    /** The best strips found for given starts of the class breaks. */
    Draft share(int[] breakStarts, long mostWork) {
        boolean[][] blocked = Draft.blocked(line, times, breakStarts);
        long[] bounds = bounds(search, blocked);
        long goal = Score.of(0, bounds).main();
        long start = search.work;
        long stopBuilding = start + (long) (BUILDING * mostWork);
        Draft best = build(Order.AS_BEFORE, inOrder(Order.AS_BEFORE), breakStarts, blocked);
        for (Order order : Order.values()) {
            List<Integer> seats = new ArrayList<>(inOrder(order));
            long stopAt = start + (stopBuilding - start) * (order.ordinal() + 1) / Order.values().length;
            while (best.score().main() > goal && search.work < stopAt) {
                Draft draft = build(order, seats, breakStarts, blocked);
                best = draft.score().betterThan(best.score()) ? draft : best;
                if (!bringForward(seats, draft, bounds)) {
                    break;
                }
            }
        }
        return best.score().main() > goal ? improve(best, blocked, bounds, start + mostWork) : best;
    }

    /**
     * Lets the seats that fared worse than they could choose earlier next time, the worst by most places ("squeaky
     * wheel" optimisation, Joslin and Clements, Journal of Artificial Intelligence Research 10, 1999; from memory).
     */
    private static boolean bringForward(List<Integer> seats, Draft draft, long[] bounds) {
        List<Integer> worse = seats.stream().filter(i -> draft.costs[i] > bounds[i])
                .sorted(Comparator.comparingLong((Integer i) -> draft.costs[i] - bounds[i]).thenComparing(i -> i))
                .toList();
        int rank = 0;
        for (int seat : worse) {
            int at = seats.indexOf(seat);
            int by = 1 + rank++ * seats.size() / (2 * worse.size());
            seats.remove(at);
            seats.add(Math.max(0, at - by), seat);
        }
        return !worse.isEmpty();
    }

    /** In which order seats choose when a plan is first built. */
    private enum Order { AS_BEFORE, FIRST_READY, TIGHTEST, FIRST_FREE }

    private Draft build(Order order, List<Integer> seats, int[] breakStarts, boolean[][] blocked) {
        Draft draft = new Draft(breakStarts, line.lanes.size());
        Places places = line.placesNow();
        int[][] kept = reserve(places, blocked, order == Order.AS_BEFORE);
        for (int i : seats) {
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
