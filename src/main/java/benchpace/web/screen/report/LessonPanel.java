package benchpace.web.screen.report;

import benchpace.board.pacing.StepLessons;
import benchpace.plan.Plan;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What past classes taught about the steps of a plan, and what of it the organiser took over.
 *
 * @param rows   one a step; empty if nothing was taught
 * @param basis  what it rests on, in a sentence
 * @param inUse  what the next class is judged by, in a sentence
 * @param news   whether there is something to take over
 * @param forget whether there is something to take back
 */
public record LessonPanel(List<Row> rows, String basis, String inUse, boolean news, boolean forget) {
    /** @param planned like the others in minutes, tenths shown */
    public record Row(String step, String planned, String learned, String expected) { }

    public static LessonPanel of(Optional<StepLessons.Lesson> given, Plan plan, Times times) {
        if (given.isEmpty() || given.get().steps().isEmpty()) {
            return new LessonPanel(List.of(), "", "", false, false);
        }
        StepLessons.Lesson lesson = given.get();
        List<Row> rows = lesson.figures(plan).stream().map(f -> new Row(f.step(), minutes(f.plannedMinutes()),
                minutes(f.learnedMinutes()), minutes(f.expectedMinutes()))).toList();
        String basis = "By " + (lesson.classes() == 1 ? "one closed class" : lesson.classes() + " closed classes")
                + " of this plan here; the plan itself counts as much as two, and older classes fade.";
        String inUse = lesson.accepted().map(a -> "The next class is judged by what you took over on "
                + times.date(a.at()) + ", from " + (a.classes() == 1 ? "one class" : a.classes() + " classes") + ".")
                .orElse("The next class is judged by the plan until you take this over.");
        boolean news = lesson.news() && rows.stream().anyMatch(r -> !r.learned().equals(r.expected()));
        return new LessonPanel(rows, basis, inUse, news, lesson.accepted().isPresent());
    }

    private static String minutes(double minutes) {
        double tenths = Math.round(10 * minutes) / 10.0;
        return tenths == Math.rint(tenths) ? Phrases.count((int) tenths)
                : String.format(Locale.ROOT, "%.1f min", tenths);
    }
}
