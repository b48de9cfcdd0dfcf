package benchpace.web.screen.plans;

import benchpace.plan.Activity;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.PlanWords;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A plan as it was in one of its versions.
 *
 * @param name    as it was called then
 * @param tag     of the version that stands now, for bringing this one back
 * @param saved   when, and on which device
 * @param what    seats, length and candles
 * @param current it is the one that stands now
 * @param gone    what it has not and the plan has now, in words; empty if nothing
 */
public record VersionPage(Viewer viewer, String id, int number, String name, String tag, String saved, String about,
                          String what, boolean current, List<Line> steps, List<Line> candles, List<Line> activities,
                          List<String> gone) {

    /**
     * A step, a candle or an activity of it.
     *
     * @param differs it is not there now, or not so
     */
    public record Line(String name, String detail, boolean differs) { }

    public VersionPage {
        steps = List.copyOf(steps);
        candles = List.copyOf(candles);
        activities = List.copyOf(activities);
        gone = List.copyOf(gone);
    }

    /** @param then as it was @param now as it is @param tag of the version that stands now */
    public static VersionPage of(Viewer viewer, Plan then, Plan now, int number, String tag, String saved,
                                 boolean current) {
        return new VersionPage(viewer, now.id().value(), number, then.name(), tag, saved, then.about(),
                PlanWords.what(then), current,
                lines(then.steps(), now.steps(), Step::name, PlanWords::step),
                lines(then.candles(), now.candles(), Candle::name, PlanWords::candle),
                lines(then.activities(), now.activities(), Activity::name, PlanWords::activity),
                Stream.of(
                        gone("steps", then.steps(), now.steps(), Step::id, Step::name),
                        gone("candles", then.candles(), now.candles(), Candle::id, Candle::name),
                        gone("activities", then.activities(), now.activities(), Activity::id, Activity::name))
                        .filter(words -> !words.isEmpty()).toList());
    }

    private static <T> List<Line> lines(List<T> then, List<T> now, Function<T, String> name,
                                        Function<T, String> detail) {
        return then.stream().map(one -> new Line(name.apply(one), detail.apply(one), !now.contains(one))).toList();
    }

    private static <T, I> String gone(String kind, List<T> then, List<T> now, Function<T, I> id,
                                      Function<T, String> name) {
        Set<I> had = then.stream().map(id).collect(Collectors.toSet());
        return PlanWords.gone(kind, now.stream().filter(one -> !had.contains(id.apply(one))).map(name).toList());
    }

    public boolean differs() {
        return !gone.isEmpty() || List.of(steps, candles, activities).stream()
                .anyMatch(lines -> lines.stream().anyMatch(Line::differs));
    }

    public boolean bringsBack() {
        return viewer.instructor() && !current;
    }

    public Shell shell() {
        return PlansPage.shell("Version " + number + " of " + name, viewer);
    }
}
