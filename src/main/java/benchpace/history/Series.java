package benchpace.history;

import benchpace.report.Medians;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One figure from class to class. Many classes are put together, as many to a dot as it takes: their medians say where
 * they lie, and a drawing and its trend never cost more than {@value #MOST_DOTS} dots do.
 *
 * @param dots in the order of time
 */
public record Series(List<Dot> dots) {
    /** More would touch one another on a drawing as wide as a phone. */
    public static final int MOST_DOTS = 100;

    public Series {
        dots = List.copyOf(dots);
    }

    /** @param each a dot a class, in any order */
    public static Series of(List<Dot> each) {
        List<Dot> sorted = each.stream().sorted(Comparator.comparingDouble(Dot::day)).toList();
        int together = Math.max(1, (sorted.size() + MOST_DOTS - 1) / MOST_DOTS);
        List<Dot> dots = new ArrayList<>();
        for (int from = 0; from < sorted.size(); from += together) {
            List<Dot> few = sorted.subList(from, Math.min(sorted.size(), from + together));
            dots.add(new Dot(median(few, Dot::day), median(few, Dot::value), few.size()));
        }
        return new Series(dots);
    }

    private static double median(List<Dot> dots, ToDoubleFunction<Dot> of) {
        return Medians.of(dots.stream().mapToDouble(of).toArray());
    }

    /** How many classes it stands for. */
    public int classes() {
        return dots.stream().mapToInt(Dot::classes).sum();
    }

    public Trend trend() {
        return Trend.of(dots);
    }
}
