package benchpace.web.screen;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import benchpace.history.Lost;
import benchpace.history.PastClass;
import benchpace.history.PastClass.Standing;
import benchpace.web.screen.history.HistoryAddress;
import benchpace.web.screen.history.HistoryPage;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** The page of past classes in several situations, of made-up classes. */
public final class HistoryScreens {
    private static final Instant FIRST = Instant.parse("2026-01-08T17:30:00Z");
    private static final Map<String, String> STEPS = Map.of("wicks", "Set the wick", "pour", "Pour");

    private HistoryScreens() { }

    /** By name. */
    public static Map<String, HistoryPage> all(Viewer viewer) {
        Map<String, HistoryPage> all = new LinkedHashMap<>();
        all.put("many", page(past(64, 64), "", viewer));
        all.put("few", page(odd(), "", viewer));
        all.put("one", page(past(1, 1), "", viewer));
        all.put("two", page(past(2, 2), "", viewer));
        all.put("none", page(List.of(), "", viewer));
        all.put("none-chosen", page(past(4, 4), "late?", viewer));
        return all;
    }

    private static HistoryPage page(List<PastClass> classes, String kept, Viewer viewer) {
        return HistoryPage.of(new HistoryPage.Given(classes, HistoryAddress.read(name -> name.equals("kept")
                ? Optional.of(kept) : name.equals("room") && !kept.isEmpty() ? Optional.of("The Back Room")
                : Optional.empty())), viewer, new Times(Evening.ZONE));
    }

    /** Each kind of row that is not like the others. */
    private static List<PastClass> odd() {
        List<PastClass> all = new ArrayList<>(past(3, 3));
        PastClass last = all.get(0);
        all.add(0, with(last, "Wednesday, left as it was", false, Standing.LEFT_OPEN, Optional.empty()));
        all.add(1, with(last, "Tuesday", false, Standing.TO_COME, Optional.empty()));
        all.add(2, with(last, "Monday", false, Standing.FAILED, Optional.empty()));
        all.add(3, with(last, "Demo: evening class", true, Standing.RECKONED, last.figures()));
        ClassFigures dry = last.figures().orElseThrow();
        all.add(4, with(last, "Cut short by a fire drill", false, Standing.RECKONED, Optional.of(new ClassFigures(
                dry.promised(), dry.promised().minus(Duration.ofMinutes(80)), dry.plannedReady(), Optional.empty(),
                ReadyBy.NOBODY, List.of(), 0, 0, FlagFigures.NONE, CureFigures.NONE))));
        return all;
    }

    private static PastClass with(PastClass like, String name, boolean demo, Standing standing,
                                  Optional<ClassFigures> figures) {
        return new PastClass(like.id(), name, like.planId(), like.planName(), "", like.startsAt(), like.seats(), demo,
                0, standing, figures, like.steps());
    }

    /** The latest first: a class a week, less and less late, the idle minutes to and fro. */
    private static List<PastClass> past(int count, int seed) {
        Random lots = new Random(seed);
        List<PastClass> all = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            Instant start = FIRST.plus(Duration.ofDays(7L * n / 2));
            Instant promised = start.plus(Duration.ofMinutes(150));
            int late = (int) Math.round(22 - n * 0.35 + 5 * lots.nextGaussian()) + (n == 17 ? 160 : 0);
            int flags = lots.nextInt(6);
            int answered = lots.nextInt(flags + 1);
            int judged = n % 4 == 3 ? 0 : 6;
            List<Lost> lost = new ArrayList<>();
            lost.add(new Lost(Cause.STEP, "wicks", 4 + 4 * lots.nextDouble()));
            if (n % 3 > 0) {
                lost.add(new Lost(Cause.OPENING, "", 1 + 3 * lots.nextDouble()));
                lost.add(new Lost(Cause.AWAY, "", 1));
            }
            Instant planned = start.plus(Duration.ofMinutes(105));
            OptionalDouble answers = answered == 0 ? OptionalDouble.empty()
                    : OptionalDouble.of(0.5 + 3 * lots.nextDouble());
            CureFigures cures = judged == 0 ? CureFigures.NONE : new CureFigures(judged, judged - lots.nextInt(3),
                    OptionalDouble.of(3 * lots.nextGaussian()));
            ClassFigures figures = new ClassFigures(promised, promised.plus(Duration.ofMinutes(late)), planned,
                    Optional.of(planned.plus(Duration.ofMinutes(9))), n % 2 == 0 ? ReadyBy.HAND_TEST : ReadyBy.NOBODY,
                    lost, 8, lots.nextInt(30), new FlagFigures(flags, answered, answers,
                    Math.min(flags, lots.nextInt(2))), cures);
            all.add(0, new PastClass("past-" + n, n % 2 == 0 ? "Thursday evening" : "Sunday for two", "evening-pour",
                    n % 2 == 0 ? "Evening pour" : "Small table", n % 2 == 0 ? "The Tallow Loft" : "", start, 8, false,
                    n % 5 == 0 ? 1 : 0, Standing.RECKONED, Optional.of(figures), STEPS));
        }
        return all;
    }
}
