package benchpace.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What one thing cost past classes: by how much earlier, in the mean of all of them, the last candle would have been
 * ready had it alone kept to the plan. Steps of one name are one thing, whatever their plan.
 *
 * @param step        the step's name; empty where it is no step's
 * @param meanMinutes over all classes, those that it did not hold among them
 * @param classes     how many it held for half a minute or more
 * @param series      the minutes from class to class
 */
public record WhatCost(Cause cause, String step, double meanMinutes, int classes, Series series) {

    private record Thing(Cause cause, String step) { }

    /** The costliest first. @param classes those that do not count are passed over */
    public static List<WhatCost> of(List<PastClass> classes) {
        List<PastClass> counted = classes.stream().filter(PastClass::counts).toList();
        List<Map<Thing, Double>> each = counted.stream().map(WhatCost::minutes).toList();
        Set<Thing> things = new LinkedHashSet<>();
        each.forEach(minutes -> things.addAll(minutes.keySet()));
        List<WhatCost> costs = new ArrayList<>();
        for (Thing thing : things) {
            List<Dot> dots = IntStream.range(0, counted.size())
                    .mapToObj(i -> Measure.dot(counted.get(i), each.get(i).getOrDefault(thing, 0.0))).toList();
            costs.add(new WhatCost(thing.cause(), thing.step(),
                    dots.stream().mapToDouble(Dot::value).average().orElseThrow(),
                    (int) dots.stream().filter(d -> d.value() > 0).count(), Series.of(dots)));
        }
        costs.sort(Comparator.comparingDouble(WhatCost::meanMinutes).reversed());
        return costs;
    }

    /** Of two steps of one name the larger: their minutes would overlap. */
    private static Map<Thing, Double> minutes(PastClass past) {
        Map<Thing, Double> minutes = new LinkedHashMap<>();
        past.figures().orElseThrow().lost().stream().filter(Lost::counts)
                .forEach(lost -> minutes.merge(thing(past, lost), lost.minutes(), Math::max));
        return minutes;
    }

    private static Thing thing(PastClass past, Lost lost) {
        return new Thing(lost.cause(), lost.step().isEmpty() ? ""
                : past.steps().getOrDefault(lost.step(), lost.step()));
    }
}
