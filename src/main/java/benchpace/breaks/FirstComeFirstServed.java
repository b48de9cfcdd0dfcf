package benchpace.breaks;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What happens without a plan: whoever comes free takes the first thing on the list that has a place and does not
 * outlast their candle; class breaks come as soon as everybody is free for them. The same rules as the plan's, without
 * looking ahead; here to show what planning is worth.
 */
public final class FirstComeFirstServed {
    private FirstComeFirstServed() { }

    /** The wait as it would go without planning. Announcements and the previous plan carry no weight here. */
    public static WaitPlan plan(WaitProblem problem) {
        Timeline line = new Timeline(problem);
        BreakTimes times = new BreakTimes(line);
        return new PlanReading(line, draft(line, times), false).plan();
    }

    /** The same as a draft, which planning starts from too, so that it never does worse. */
    static Draft draft(Timeline line, BreakTimes times) {
        Draft draft = new Draft(times.combinations(false).get(0), line.lanes.size());
        new Queue(line, draft, Draft.blocked(line, times, draft.breakStarts)).run();
        return draft;
    }

    private static final class Queue {
        private final Timeline line;
        private final Draft draft;
        private final boolean[][] blocked;
        private final Places places;
        private final StripSearch rules;
        private final long[] states;
        private final int[] freeFrom;

        Queue(Timeline line, Draft draft, boolean[][] blocked) {
            this.line = line;
            this.draft = draft;
            this.blocked = blocked;
            this.places = line.placesNow();
            this.rules = new StripSearch(line);
            this.freeFrom = line.lanes.stream().mapToInt(Lane::from).toArray();
            this.states = new long[freeFrom.length];
            for (int i = 0; i < states.length; i++) {
                rules.begin(line.lanes.get(i), places, blocked[i]);
                states[i] = rules.firstState();
            }
        }

        void run() {
            for (int t = 0; t < line.slots; t++) {
                for (int i : byFreeFrom()) {
                    if (freeFrom[i] <= t && t < line.lanes.get(i).until()) {
                        takeUp(i, t);
                    }
                }
            }
            Places none = Places.of(line.tasks.size(), line.slots);
            for (int i = 0; i < freeFrom.length; i++) {
                rules.begin(line.lanes.get(i), none, blocked[i]);
                draft.costs[i] = rules.cost(draft.strips[i]);
            }
        }

        private List<Integer> byFreeFrom() {
            return IntStream.range(0, freeFrom.length).boxed()
                    .sorted(Comparator.comparingInt((Integer i) -> freeFrom[i]).thenComparing(i -> i)).toList();
        }

        private void takeUp(int i, int t) {
            rules.begin(line.lanes.get(i), places, blocked[i]);
            for (int k = 0; k < line.tasks.size(); k++) {
                Task task = line.tasks.get(k);
                for (int length = task.length(); length >= task.shortest(); length--) {
                    if (rules.mayBegin(states[i], k) && rules.fits(k, t, length)) {
                        int[] strip = Arrays.copyOf(draft.strips[i], draft.strips[i].length + 1);
                        strip[strip.length - 1] = Part.of(k, t, t + length);
                        draft.strips[i] = strip;
                        places.add(k, t, t + length, -1);
                        states[i] = StripSearch.after(states[i], k);
                        freeFrom[i] = t + length;
                        return;
                    }
                }
            }
        }
    }
}
