package benchpace.breaks.search;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Chooses when the class breaks begin and has {@link StripSharing} share the places among the seats. Bounded by
 * counted work, not by time: the same problem always gives the same plan.
 */
final class PlanSearch {
    /** Up to this many seats every start of a class break is looked at. */
    private static final int SMALL = 8;
    /** The work, as {@link SearchWork} counts it, that building and improving may take. */
    private static final long MOST_WORK = 70_000;
    private static final int SAMPLE = 10;
    private static final int BUILT_AT_MOST = 8;

    private final Timeline line;
    private final BreakTimes times;
    private final SearchWork work = new SearchWork();

    PlanSearch(Timeline line) {
        this.line = line;
        this.times = new BreakTimes(line);
    }

    /** The best schedule found; never worse than first come, first served. */
    Schedule best() {
        List<StripSharing> choices = times.combinations(line.windows.size() > SMALL).stream().map(this::sharing)
                .toList();
        Schedule planned = choices.size() == 1 ? choices.get(0).best(MOST_WORK) : bestOf(choices);
        if (planned.score().main() == 0 && planned.score().unplaced() == 0) {
            return planned;
        }
        Schedule unplanned = FirstComeFirstServed.schedule(line, times);
        Schedule improved = sharing(unplanned.breakStarts()).improved(unplanned, MOST_WORK / 4);
        return Stream.of(planned, improved, unplanned).min(Comparator.comparing(Schedule::score)).orElseThrow();
    }

    private StripSharing sharing(List<Integer> breakStarts) {
        return new StripSharing(line, times, breakStarts, work);
    }

    /** Builds a schedule for the starts whose bounds promise most, and shares the places well for the best two. */
    private Schedule bestOf(List<StripSharing> choices) {
        record Built(StripSharing sharing, Score score) { }
        return promising(choices).stream().map(s -> new Built(s, s.once().score()))
                .sorted(Comparator.comparing(Built::score)).limit(2)
                .map(b -> b.sharing().best(MOST_WORK / 2)).min(Comparator.comparing(Schedule::score)).orElseThrow();
    }

    private List<StripSharing> promising(List<StripSharing> choices) {
        record Bound(StripSharing sharing, long least) { }
        int everyOther = Math.max(1, line.windows.size() / SAMPLE);
        List<Bound> all = choices.stream().map(s -> new Bound(s, s.least(everyOther))).toList();
        long least = all.stream().mapToLong(Bound::least).min().orElseThrow();
        List<Bound> good = all.stream().filter(b -> b.least() - least < Cost.IDLE_MINUTE * SAMPLE).toList();
        int each = (good.size() + BUILT_AT_MOST - 1) / BUILT_AT_MOST;
        return IntStream.range(0, good.size()).filter(i -> i % each == 0).mapToObj(i -> good.get(i).sharing()).toList();
    }
}
