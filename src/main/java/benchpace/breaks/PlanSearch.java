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
        this.small = line.windows.size() <= SMALL;
        this.search = new StripSearch(line, false);
    }

    /** The best plan found. */
    Schedule best() {
        List<int[]> combinations = times.combinations(!small);
        boolean complete = times.complete(combinations);
        Schedule schedule = combinations.size() == 1 ? share(combinations.get(0), MOST_WORK) : bestOf(combinations);
        if (schedule.score().main() > 0 || schedule.score().unplaced() > 0) {
            Schedule unplanned = FirstComeFirstServed.schedule(line, times);
            boolean[][] blocked = Schedule.blocked(line, times, unplanned.breakStarts);
            Schedule other = improve(unplanned.copy(), blocked, bounds(search, blocked), search.work + MOST_WORK / 4);
            schedule = Stream.of(schedule, other, unplanned).min(Comparator.comparing(Schedule::score)).orElseThrow();
        }
        Score score = schedule.score();
        boolean nothingToGain = score.unplaced() == 0 && score.main() == 0;
        proven = nothingToGain || complete && combinations.size() == 1 && reachesBounds(schedule);
        if (small && !proven) {
            ExactSearch exact = new ExactSearch(line, times, schedule);
            schedule = exact.search(combinations);
            proven = complete && exact.finished();
        }
        return schedule;
    }

    boolean proven() {
        return proven;
    }

    /** Builds a plan for the starts whose bounds promise most, and shares the places well for the best two. */
    private Schedule bestOf(List<int[]> combinations) {
        return promising(combinations).stream().map(this::buildOnce).sorted(Comparator.comparing(Schedule::score))
                .limit(2).map(d -> share(d.breakStarts, MOST_WORK / 2))
                .min(Comparator.comparing(Schedule::score)).orElseThrow();
    }

    private Schedule buildOnce(int[] starts) {
        return build(Order.AS_BEFORE, inOrder(Order.AS_BEFORE), starts, Schedule.blocked(line, times, starts));
    }

    private List<int[]> promising(List<int[]> combinations) {
        record Bound(int[] starts, long least) { }
        int step = Math.max(1, line.windows.size() / SAMPLE);
        Capacity places = line.placesNow();
        List<Bound> all = new ArrayList<>();
        for (int[] starts : combinations) {
            boolean[][] blocked = Schedule.blocked(line, times, starts);
            long sum = 0;
            for (int i = 0; i < line.windows.size(); i += step) {
                search.begin(line.windows.get(i), places, blocked[i]);
                sum += search.best();
            }
            all.add(new Bound(starts, sum));
        }
        long least = all.stream().mapToLong(Bound::least).min().orElseThrow();
        List<Bound> good = all.stream().filter(b -> b.least() - least < Cost.IDLE_MINUTE * SAMPLE).toList();
        int each = (good.size() + BUILT_AT_MOST - 1) / BUILT_AT_MOST;
        return IntStream.range(0, good.size()).filter(i -> i % each == 0).mapToObj(i -> good.get(i).starts()).toList();
    }

    private boolean reachesBounds(Schedule schedule) {
        StripSearch exact = new StripSearch(line);
        long[] bounds = bounds(exact, Schedule.blocked(line, times, schedule.breakStarts));
        return !exact.cutShort() && schedule.score().main() == Score.of(0, bounds).main();
    }

    private long[] bounds(StripSearch search, boolean[][] blocked) {
        Capacity places = line.placesNow();
        long[] bounds = new long[line.windows.size()];
        for (int i = 0; i < bounds.length; i++) {
            search.begin(line.windows.get(i), places, blocked[i]);
            bounds[i] = search.best();
        }
        return bounds;
    }

    /** The best strips found for given starts of the class breaks. */
    Schedule share(int[] breakStarts, long mostWork) {
        boolean[][] blocked = Schedule.blocked(line, times, breakStarts);
        long[] bounds = bounds(search, blocked);
        long goal = Score.of(0, bounds).main();
        long start = search.work;
        long stopBuilding = start + (long) (BUILDING * mostWork);
        Schedule best = build(Order.AS_BEFORE, inOrder(Order.AS_BEFORE), breakStarts, blocked);
        for (Order order : Order.values()) {
            List<Integer> seats = new ArrayList<>(inOrder(order));
            long stopAt = start + (stopBuilding - start) * (order.ordinal() + 1) / Order.values().length;
            while (best.score().main() > goal && search.work < stopAt) {
                Schedule schedule = build(order, seats, breakStarts, blocked);
                best = schedule.score().betterThan(best.score()) ? schedule : best;
                if (!bringForward(seats, schedule, bounds)) {
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
    private static boolean bringForward(List<Integer> seats, Schedule schedule, long[] bounds) {
        List<Integer> worse = seats.stream().filter(i -> schedule.costs[i] > bounds[i])
                .sorted(Comparator.comparingLong((Integer i) -> schedule.costs[i] - bounds[i]).thenComparing(i -> i))
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

    private Schedule build(Order order, List<Integer> seats, int[] breakStarts, boolean[][] blocked) {
        Schedule schedule = new Schedule(breakStarts, line.windows.size());
        Capacity places = line.placesNow();
        int[][] kept = reserve(places, blocked, order == Order.AS_BEFORE);
        for (int i : seats) {
            places.giveBack(kept[i]);
            choose(i, schedule, places, blocked);
        }
        return schedule;
    }

    private List<Integer> inOrder(Order order) {
        Comparator<Integer> by = Comparator.comparingInt((Integer i) -> switch (order) {
            case AS_BEFORE, FIRST_READY -> line.windows.get(i).until();
            case TIGHTEST -> Math.min(line.windows.get(i).mustEndBy(), line.windows.get(i).until())
                    - line.windows.get(i).from();
            case FIRST_FREE -> line.windows.get(i).from();
        });
        return IntStream.range(0, line.windows.size()).boxed().sorted(by.thenComparing(i -> i)).toList();
    }

    /** Holds the places of what was announced, or of the whole previous plan, until the seat itself chooses. */
    private int[][] reserve(Capacity places, boolean[][] blocked, boolean allOfIt) {
        int[][] kept = new int[line.windows.size()][];
        for (int round = 0; round < (allOfIt ? 2 : 1); round++) {
            for (int i = 0; i < kept.length; i++) {
                SeatWindow window = line.windows.get(i);
                search.begin(window, places, blocked[i]);
                List<Integer> parts = new ArrayList<>();
                for (int k = 0; k < line.tasks.size(); k++) {
                    int length = line.tasks.get(k).shortest();
                    for (int slot : round == 0 ? window.told()[k] : window.before()[k]) {
                        if (search.fits(k, slot, length) && (round == 0 || !window.isTold(k, slot))) {
                            parts.add(Booking.of(k, slot, slot + length));
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

    private void choose(int i, Schedule schedule, Capacity places, boolean[][] blocked) {
        search.begin(line.windows.get(i), places, blocked[i]);
        schedule.costs[i] = search.best();
        schedule.strips[i] = search.bestStrip();
        places.take(schedule.strips[i]);
    }

    private Schedule improve(Schedule schedule, boolean[][] blocked, long[] bounds, long stopAt) {
        Capacity places = line.placesNow();
        for (int[] strip : schedule.strips) {
            places.take(strip);
        }
        boolean better = true;
        while (better && search.work < stopAt) {
            better = false;
            for (int i : byCost(schedule)) {
                if (schedule.costs[i] <= bounds[i] || search.work >= stopAt) {
                    continue;
                }
                better |= alone(i, schedule, places, blocked) || withAnother(i, schedule, places, blocked, bounds, stopAt);
            }
        }
        return schedule;
    }

    private List<Integer> byCost(Schedule schedule) {
        return IntStream.range(0, schedule.costs.length).boxed()
                .sorted(Comparator.comparingLong((Integer i) -> -schedule.costs[i]).thenComparing(i -> i)).toList();
    }

    private boolean alone(int i, Schedule schedule, Capacity places, boolean[][] blocked) {
        long before = schedule.costs[i];
        places.giveBack(schedule.strips[i]);
        choose(i, schedule, places, blocked);
        return schedule.costs[i] < before;
    }

    private boolean withAnother(int i, Schedule schedule, Capacity places, boolean[][] blocked, long[] bounds, long stopAt) {
        for (int j = 0; j < schedule.costs.length && search.work < stopAt && schedule.costs[i] > bounds[i]; j++) {
            if (j == i || schedule.strips[j].length == 0) {
                continue;
            }
            int[][] strips = {schedule.strips[i], schedule.strips[j]};
            long[] costs = {schedule.costs[i], schedule.costs[j]};
            places.giveBack(strips[0]);
            places.giveBack(strips[1]);
            choose(i, schedule, places, blocked);
            choose(j, schedule, places, blocked);
            Score now = Score.of(0, new long[] {schedule.costs[i], schedule.costs[j]});
            if (now.betterThan(Score.of(0, costs))) {
                return true;
            }
            places.giveBack(schedule.strips[i]);
            places.giveBack(schedule.strips[j]);
            put(i, strips[0], costs[0], schedule, places);
            put(j, strips[1], costs[1], schedule, places);
        }
        return false;
    }

    private static void put(int i, int[] strip, long cost, Schedule schedule, Capacity places) {
        schedule.strips[i] = strip;
        schedule.costs[i] = cost;
        places.take(strip);
    }
}
