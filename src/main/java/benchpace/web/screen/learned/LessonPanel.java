package benchpace.web.screen.learned;

import benchpace.board.pacing.StepLessons;
import benchpace.plan.Plan;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What past classes taught about the steps of a plan, and what of it the organiser took over; the same on the look back
 * and where all is told that was learned.
 *
 * @param planId what it is kept by, with {@code place}
 * @param rows   one a step; empty if nothing was taught
 * @param basis  what it rests on, in a sentence
 * @param inUse  what the next class is judged by, in a sentence
 * @param news   whether there is something to take over
 * @param forget whether there is something to take back
 * @param tag    of what stands, so that a page that is behind takes over nothing unseen
 */
public record LessonPanel(String planId, String place, List<Row> rows, String basis, String inUse, boolean news,
                          boolean forget, String tag) {
    /**
     * @param planned  like the others in minutes, tenths shown
     * @param news     whether this step has something to take over
     * @param accepted whether this step has something to take back
     */
    public record Row(String id, String step, String planned, String learned, String expected, boolean news,
                      boolean accepted) { }

    public static LessonPanel of(Optional<StepLessons.Lesson> given, Plan plan, Times times) {
        StepLessons.Taught key = StepLessons.Taught.of(plan);
        if (given.isEmpty() || given.get().steps().isEmpty() && given.get().accepted().isEmpty()) {
            return new LessonPanel(key.planId(), key.place(), List.of(), "", "", false, false, "");
        }
        StepLessons.Lesson lesson = given.get();
        List<Row> rows = lesson.figures(plan).stream().map(f -> {
            String learned = minutes(f.learnedMinutes());
            String expected = minutes(f.expectedMinutes());
            return new Row(f.id(), f.step(), minutes(f.plannedMinutes()), learned, expected,
                    f.news() && !learned.equals(expected), f.accepted());
        }).toList();
        return new LessonPanel(key.planId(), key.place(), rows, basis(lesson), inUse(lesson, times),
                rows.stream().anyMatch(Row::news), lesson.accepted().isPresent(), lesson.tag());
    }

    private static String basis(StepLessons.Lesson lesson) {
        return lesson.steps().isEmpty() ? "The classes that taught this are no more."
                : "By " + (lesson.classes() == 1 ? "one closed class" : lesson.classes() + " closed classes")
                        + " of this plan here; the plan itself counts as much as two, and older classes fade.";
    }

    private static String inUse(StepLessons.Lesson lesson, Times times) {
        return lesson.accepted().map(a -> "The next class is judged by what you took over on " + times.date(a.at())
                + ", from " + (a.classes() == 1 ? "one class" : a.classes() + " classes")
                + part(lesson, a.steps().size()) + ".")
                .orElse("The next class is judged by the plan until you take this over.");
    }

    /** Where some steps were taken over and others not. */
    private static String part(StepLessons.Lesson lesson, int accepted) {
        return accepted >= lesson.steps().size() ? ""
                : ", for " + (accepted == 1 ? "one step" : accepted + " steps") + ", and by the plan for the others";
    }

    /** Whether there is anything to show. */
    public boolean told() {
        return !rows.isEmpty() || forget;
    }

    private static String minutes(double minutes) {
        double tenths = Math.round(10 * minutes) / 10.0;
        return tenths == Math.rint(tenths) ? Phrases.count((int) tenths)
                : String.format(Locale.ROOT, "%.1f min", tenths);
    }
}
