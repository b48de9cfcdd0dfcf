package benchpace.web.screen.history;

import benchpace.history.PastClass;
import benchpace.history.WhatCost;
import benchpace.words.Times;
import benchpace.words.TrendWords;
import java.util.List;
import java.util.Locale;

/**
 * What held past classes, drawn: a bar a thing, as long as it cost in the mean.
 *
 * @param words what it says, in sentences
 */
public record CostChart(List<Bar> bars, List<String> words) {
    private static final int MOST = 6;
    /** Less would be told as nothing. */
    private static final double LEAST_MINUTES = 0.05;

    /** @param length of 100, for the longest */
    public record Bar(String name, int length, String minutes) { }

    static CostChart of(List<PastClass> classes, Times times) {
        int counted = (int) classes.stream().filter(PastClass::counts).count();
        List<WhatCost> costs = WhatCost.of(classes).stream().filter(c -> c.meanMinutes() >= LEAST_MINUTES).toList();
        double longest = costs.isEmpty() ? 1 : costs.get(0).meanMinutes();
        return new CostChart(costs.stream().limit(MOST).map(c -> new Bar(TrendWords.name(c),
                (int) Math.max(1, Math.round(100 * c.meanMinutes() / longest)),
                String.format(Locale.ROOT, "%.1f min", c.meanMinutes()))).toList(),
                TrendWords.of(costs, counted, times));
    }
}
