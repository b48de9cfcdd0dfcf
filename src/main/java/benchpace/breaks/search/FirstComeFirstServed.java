package benchpace.breaks.search;

import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What happens without a plan: whoever comes free takes the first thing on the list that has a place and does not
 * outlast their candle; class breaks come as soon as everybody is free for them. The same rules as the plan's, without
 * looking ahead; here to show what planning is worth from an instant on. What guests were told by then is known to
 * both, and kept while it can be; what has been is the same for both.
 */
public final class FirstComeFirstServed {
    private FirstComeFirstServed() { }

    /** The wait as it would go on from now without planning. */
    public static WaitPlan plan(WaitProblem problem) {
        Timeline line = new Timeline(problem);
        BreakTimes times = new BreakTimes(line);
        return new PlanAssembly(line, schedule(line, times)).plan();
    }

    /** The same as a schedule, which planning starts from too, so that it never does worse. */
    static Schedule schedule(Timeline line, BreakTimes times) {
        List<Integer> starts = times.combinations(false).stream()
                .min(Comparator.comparingInt((List<Integer> s) -> broken(line, times, s))).orElseThrow();
        return new Queue(line, times.blocked(starts)).run(starts);
    }

    /** How much of what was told the class breaks would hold up if they began then. */
    private static int broken(Timeline line, BreakTimes times, List<Integer> starts) {
        int broken = 0;
        for (int b = 0; b < starts.size(); b++) {
            Task task = line.classBreaks.get(b);
            int from = starts.get(b);
            for (SeatWindow window : from == BreakTimes.NONE ? List.<SeatWindow>of() : times.takingPart(task, from)) {
                for (int k = 0; k < line.tasks.size(); k++) {
                    int length = line.tasks.get(k).shortest();
                    for (int told : window.told()[k]) {
                        broken += told < from + task.length() && from < told + length ? 1 : 0;
                    }
                }
            }
        }
        return broken;
    }

    private static final class Queue {
        private final Timeline line;
        private final List<StripRules> rules = new ArrayList<>();
        private final List<List<Booking>> told = new ArrayList<>();
        private final List<List<Booking>> taken = new ArrayList<>();
        private Capacity left;

        /** Keeps the places of what each seat was told. */
        Queue(Timeline line, boolean[][] blocked) {
            this.line = line;
            this.left = line.capacity;
            for (int i = 0; i < blocked.length; i++) {
                SeatWindow window = line.windows.get(i);
                StripRules own = new StripRules(line, window, blocked[i]);
                List<Booking> held = IntStream.range(0, line.tasks.size()).boxed()
                        .flatMap(k -> IntStream.of(window.told()[k])
                                .mapToObj(slot -> Booking.of(k, slot, line.tasks.get(k).shortest())))
                        .filter(b -> own.allows(b) && left.free(b)).toList();
                left = left.less(held);
                rules.add(own);
                told.add(held);
                taken.add(new ArrayList<>());
            }
        }

        Schedule run(List<Integer> starts) {
            for (int t = 0; t < line.slots; t++) {
                for (int seat : byFreeFrom()) {
                    if (freeFrom(seat) <= t && t < line.windows.get(seat).until()) {
                        takeUp(seat, t);
                    }
                }
            }
            return new Schedule(starts, IntStream.range(0, taken.size())
                    .mapToObj(i -> rules.get(i).strip(taken.get(i))).toList());
        }

        private List<Integer> byFreeFrom() {
            return IntStream.range(0, taken.size()).boxed()
                    .sorted(Comparator.comparingInt(this::freeFrom).thenComparing(i -> i)).toList();
        }

        private int freeFrom(int seat) {
            List<Booking> own = taken.get(seat);
            return own.isEmpty() ? line.windows.get(seat).from() : own.get(own.size() - 1).until();
        }

        /** First what it was told for now, then the first on the list. */
        private void takeUp(int seat, int t) {
            List<Booking> now = told.get(seat).stream().filter(b -> b.from() == t).toList();
            left = now.isEmpty() ? left : left.more(now);
            int next = told.get(seat).stream().mapToInt(Booking::from).filter(from -> from > t).min()
                    .orElse(line.slots);
            first(seat, t, next, now).ifPresent(booking -> {
                taken.get(seat).add(booking);
                left = left.less(List.of(booking));
            });
        }

        private Optional<Booking> first(int seat, int t, int next, List<Booking> now) {
            StripState state = StripState.first(line.windows.get(seat));
            for (Booking booking : taken.get(seat)) {
                state = state.after(booking);
            }
            Optional<Booking> found = Optional.empty();
            for (int i = 0; i < now.size() && found.isEmpty(); i++) {
                found = longest(seat, state, now.get(i).task(), t, next);
            }
            for (int k = 0; k < line.tasks.size() && found.isEmpty(); k++) {
                found = longest(seat, state, k, t, next);
            }
            return found;
        }

        /** As long a stay at a task as fits from now up to a slot. */
        private Optional<Booking> longest(int seat, StripState state, int k, int t, int next) {
            Task task = line.tasks.get(k);
            if (rules.get(seat).mayFollow(state, k)) {
                for (int length = Math.min(task.length(), next - t); length >= task.shortest(); length--) {
                    Booking booking = Booking.of(k, t, length);
                    if (rules.get(seat).allows(booking) && left.free(booking)) {
                        return Optional.of(booking);
                    }
                }
            }
            return Optional.empty();
        }
    }
}
