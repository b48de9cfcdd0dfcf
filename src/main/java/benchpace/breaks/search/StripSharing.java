package benchpace.breaks.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Shares the places among the seats for given starts of the class breaks: builds a schedule seat by seat, each strip
 * the best with what is left, again and again from better orders of seats; then takes back one or two seats at a time
 * and gives them new strips while that helps. Each seat's best strip on its own is a bound from below.
 */
final class StripSharing {
    /** The share of the work that may go into building; the rest is for improving the best schedule built. */
    private static final double BUILDING = 0.6;

    private final Timeline line;
    private final List<Integer> breakStarts;
    private final boolean[][] blocked;
    private final int seats;
    private final SearchWork work;

    StripSharing(Timeline line, BreakTimes times, List<Integer> breakStarts, SearchWork work) {
        this.line = line;
        this.breakStarts = breakStarts;
        this.blocked = times.blocked(breakStarts);
        this.seats = line.windows.size();
        this.work = work;
    }

    /** In which order seats choose when a schedule is first built. */
    private enum Order { AS_BEFORE, FIRST_READY, TIGHTEST, FIRST_FREE }

    /** The cost of every so many seats' best strip on its own, in sum. */
    long least(int everyOther) {
        return IntStream.range(0, seats).filter(i -> i % everyOther == 0).mapToLong(i -> best(i, line.capacity).cost())
                .sum();
    }

    /** A schedule built once. */
    Schedule once() {
        return built(Order.AS_BEFORE, inOrder(Order.AS_BEFORE));
    }

    /** The best schedule found with so much work. */
    Schedule best(long mostWork) {
        long[] bounds = bounds();
        long goal = Score.of(0, bounds).main();
        long start = work.done();
        Schedule best = once();
        for (Order order : Order.values()) {
            List<Integer> queue = inOrder(order);
            long share = (long) (BUILDING * mostWork) * (order.ordinal() + 1) / Order.values().length;
            while (best.score().main() > goal && work.done() < start + share) {
                Schedule built = built(order, queue);
                best = built.score().betterThan(best.score()) ? built : best;
                queue = broughtForward(queue, built, bounds);
            }
        }
        return best.score().main() > goal ? improved(best, bounds, start + mostWork) : best;
    }

    /** A schedule for these starts, improved with so much work. */
    Schedule improved(Schedule schedule, long mostWork) {
        long[] bounds = bounds();
        return improved(schedule, bounds, work.done() + mostWork);
    }

    private long[] bounds() {
        return IntStream.range(0, seats).mapToLong(i -> best(i, line.capacity).cost()).toArray();
    }

    private Strip best(int seat, Capacity left) {
        return new StripSearch(line, line.windows.get(seat), left, blocked[seat], work).best();
    }

    /**
     * The seats that fared worse than they could choose earlier next time, the worst by most places ("squeaky
     * wheel" optimisation, Joslin and Clements, Journal of Artificial Intelligence Research 10, 1999; from memory).
     */
    private static List<Integer> broughtForward(List<Integer> queue, Schedule built, long[] bounds) {
        List<Integer> worse = queue.stream().filter(i -> built.cost(i) > bounds[i])
                .sorted(Comparator.comparingLong((Integer i) -> built.cost(i) - bounds[i]).thenComparing(i -> i))
                .toList();
        List<Integer> next = new ArrayList<>(queue);
        for (int rank = 0; rank < worse.size(); rank++) {
            int at = next.indexOf(worse.get(rank));
            int by = 1 + rank * queue.size() / (2 * worse.size());
            next.remove(at);
            next.add(Math.max(0, at - by), worse.get(rank));
        }
        return next;
    }

    private List<Integer> inOrder(Order order) {
        Comparator<Integer> by = Comparator.comparingInt((Integer i) -> switch (order) {
            case AS_BEFORE, FIRST_READY -> line.windows.get(i).until();
            case TIGHTEST -> Math.min(line.windows.get(i).mustEndBy(), line.windows.get(i).until())
                    - line.windows.get(i).from();
            case FIRST_FREE -> line.windows.get(i).from();
        });
        return IntStream.range(0, seats).boxed().sorted(by.thenComparing(i -> i)).toList();
    }

    private Schedule built(Order order, List<Integer> queue) {
        Schedule schedule = reserved(order == Order.AS_BEFORE);
        for (int seat : queue) {
            schedule = chosen(seat, schedule);
        }
        return schedule;
    }

    /** Holds the places of what was announced, or of the whole previous plan, until the seat itself chooses. */
    private Schedule reserved(boolean allOfIt) {
        Schedule schedule = Schedule.empty(breakStarts, seats);
        for (int round = 0; round < (allOfIt ? 2 : 1); round++) {
            Capacity left = left(schedule, -1);
            for (int i = 0; i < seats; i++) {
                List<Booking> more = held(i, round == 0, left);
                left = left.less(more);
                schedule = schedule.with(i, new Strip(0,
                        Stream.concat(schedule.strips().get(i).bookings().stream(), more.stream()).toList()));
            }
        }
        return schedule;
    }

    private List<Booking> held(int seat, boolean announced, Capacity left) {
        SeatWindow window = line.windows.get(seat);
        StripRules rules = new StripRules(line, window, blocked[seat]);
        return IntStream.range(0, line.tasks.size()).boxed()
                .flatMap(k -> IntStream.of(announced ? window.told()[k] : window.before()[k])
                        .filter(slot -> announced || !window.isTold(k, slot))
                        .mapToObj(slot -> Booking.of(k, slot, line.tasks.get(k).shortest())))
                .filter(b -> rules.allows(b) && left.free(b)).toList();
    }

    /** The same schedule with the best strip this seat can have beside the others. */
    private Schedule chosen(int seat, Schedule schedule) {
        return schedule.with(seat, best(seat, left(schedule, seat)));
    }

    private Capacity left(Schedule schedule, int except) {
        List<Booking> taken = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            if (i != except) {
                taken.addAll(schedule.strips().get(i).bookings());
            }
        }
        return line.capacity.less(taken);
    }

    private Schedule improved(Schedule schedule, long[] bounds, long stopAt) {
        Schedule best = schedule;
        boolean better = true;
        while (better && work.done() < stopAt) {
            Schedule before = best;
            for (int i : byCost(before)) {
                if (best.cost(i) > bounds[i] && work.done() < stopAt) {
                    Schedule alone = chosen(i, best);
                    best = alone.cost(i) < best.cost(i) ? alone : withAnother(i, alone, bounds[i], stopAt);
                }
            }
            better = best.score().betterThan(before.score());
        }
        return best;
    }

    private static List<Integer> byCost(Schedule schedule) {
        return IntStream.range(0, schedule.strips().size()).boxed()
                .sorted(Comparator.comparingLong((Integer i) -> -schedule.cost(i)).thenComparing(i -> i)).toList();
    }

    /** The first pair of strips with another seat that is better for both together, if there is one. */
    private Schedule withAnother(int i, Schedule schedule, long bound, long stopAt) {
        for (int j = 0; j < seats && work.done() < stopAt && schedule.cost(i) > bound; j++) {
            if (j != i && !schedule.strips().get(j).bookings().isEmpty()) {
                Schedule both = chosen(j, chosen(i, schedule.with(j, Strip.NOTHING)));
                if (pair(both, i, j).betterThan(pair(schedule, i, j))) {
                    return both;
                }
            }
        }
        return schedule;
    }

    private static Score pair(Schedule schedule, int i, int j) {
        return Score.of(0, new long[] {schedule.cost(i), schedule.cost(j)});
    }
}
