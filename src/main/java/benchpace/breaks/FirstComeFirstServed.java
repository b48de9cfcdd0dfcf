package benchpace.breaks;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
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
        return new PlanAssembly(line, schedule(line, times), false).plan();
    }

    /** The same as a schedule, which planning starts from too, so that it never does worse. */
    static Schedule schedule(Timeline line, BreakTimes times) {
        int[] starts = times.combinations(false).stream()
                .min(Comparator.comparingInt((int[] s) -> broken(line, times, s))).orElseThrow();
        Schedule schedule = new Schedule(starts, line.windows.size());
        new Queue(line, schedule, Schedule.blocked(line, times, schedule.breakStarts)).run();
        return schedule;
    }

    /** How much of what was told the class breaks would hold up if they began then. */
    private static int broken(Timeline line, BreakTimes times, int[] starts) {
        int broken = 0;
        for (int b = 0; b < starts.length; b++) {
            Task task = line.classBreaks.get(b);
            int from = starts[b];
            for (SeatWindow window : from == BreakTimes.NONE ? List.<SeatWindow>of() : times.takingPart(task, from)) {
                for (int k = 0; k < line.tasks.size(); k++) {
                    int length = line.tasks.get(k).shortest();
                    broken += (int) IntStream.of(window.told()[k])
                            .filter(told -> told < from + task.length() && from < told + length).count();
                }
            }
        }
        return broken;
    }

    private static final class Queue {
        private final Timeline line;
        private final Schedule schedule;
        private final boolean[][] blocked;
        private final Capacity places;
        private final StripSearch rules;
        private final long[] states;
        private final int[] freeFrom;
        private final int[][] told;

        Queue(Timeline line, Schedule schedule, boolean[][] blocked) {
            this.line = line;
            this.schedule = schedule;
            this.blocked = blocked;
            this.places = line.placesNow();
            this.rules = new StripSearch(line);
            this.freeFrom = line.windows.stream().mapToInt(SeatWindow::from).toArray();
            this.states = new long[freeFrom.length];
            for (int i = 0; i < states.length; i++) {
                rules.begin(line.windows.get(i), places, blocked[i]);
                states[i] = rules.firstState();
            }
            this.told = new int[freeFrom.length][0];
            for (int i = 0; i < told.length; i++) {
                hold(i);
            }
        }

        /** Keeps the places of what the seat was told. */
        private void hold(int i) {
            rules.begin(line.windows.get(i), places, blocked[i]);
            IntStream.Builder held = IntStream.builder();
            for (int k = 0; k < line.tasks.size(); k++) {
                int length = line.tasks.get(k).shortest();
                for (int slot : line.windows.get(i).told()[k]) {
                    if (rules.fits(k, slot, length)) {
                        held.add(Booking.of(k, slot, slot + length));
                    }
                }
            }
            told[i] = held.build().toArray();
            places.take(told[i]);
        }

        void run() {
            for (int t = 0; t < line.slots; t++) {
                for (int i : byFreeFrom()) {
                    if (freeFrom[i] <= t && t < line.windows.get(i).until()) {
                        takeUp(i, t);
                    }
                }
            }
            Capacity none = Capacity.of(line.tasks.size(), line.slots);
            for (int i = 0; i < freeFrom.length; i++) {
                rules.begin(line.windows.get(i), none, blocked[i]);
                schedule.costs[i] = rules.cost(schedule.strips[i]);
            }
        }

        private List<Integer> byFreeFrom() {
            return IntStream.range(0, freeFrom.length).boxed()
                    .sorted(Comparator.comparingInt((Integer i) -> freeFrom[i]).thenComparing(i -> i)).toList();
        }

        private void takeUp(int i, int t) {
            int[] now = IntStream.of(told[i]).filter(p -> Booking.from(p) == t).toArray();
            places.giveBack(now);
            int next = IntStream.of(told[i]).map(Booking::from).filter(from -> from > t).min().orElse(line.slots);
            rules.begin(line.windows.get(i), places, blocked[i]);
            for (int part : now) {
                if (takeUp(i, Booking.task(part), t, next)) {
                    return;
                }
            }
            for (int k = 0; k < line.tasks.size(); k++) {
                if (takeUp(i, k, t, next)) {
                    return;
                }
            }
        }

        private boolean takeUp(int i, int k, int t, int next) {
            Task task = line.tasks.get(k);
            for (int length = Math.min(task.length(), next - t); length >= task.shortest(); length--) {
                if (rules.mayBegin(states[i], k) && rules.fits(k, t, length)) {
                    int[] strip = Arrays.copyOf(schedule.strips[i], schedule.strips[i].length + 1);
                    strip[strip.length - 1] = Booking.of(k, t, t + length);
                    schedule.strips[i] = strip;
                    places.add(k, t, t + length, -1);
                    states[i] = StripSearch.after(states[i], k);
                    freeFrom[i] = t + length;
                    return true;
                }
            }
            return false;
        }
    }
}
