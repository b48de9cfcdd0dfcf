package benchpace.web.screen;

import benchpace.board.cooling.TaughtRoom;
import benchpace.board.pacing.StepLessons;
import benchpace.board.view.ProblemFacts;
import benchpace.cure.room.FitChange;
import benchpace.cure.room.RoomFit;
import benchpace.files.roster.Demo;
import benchpace.pace.StepPrior;
import benchpace.plan.Plan;
import benchpace.store.RoomLesson;
import benchpace.store.StepBeliefs;
import benchpace.web.screen.data.ProblemPage;
import benchpace.web.screen.learned.LearnedPage;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.learned.RoomPanel;
import benchpace.web.screen.shell.Shell;
import benchpace.words.Times;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What past classes taught, in an invented loft, and the file that helps those who help. */
final class LearnedScreens {
    private static final Times TIMES = new Times(Evening.ZONE);
    private static final Shell SHELL = new Shell("What past classes taught", "learned", List.of("report"), "", "",
            Evening.ZONE.getId(), "instructor", "");

    private LearnedScreens() { }

    private static Instant weeksAgo(int weeks) {
        return Evening.at(-60 * 24 * 7 * weeks);
    }

    private static TaughtRoom.Row row(String id, int weeks, double mean, double sd, int observations,
                                      Optional<Double> times, Optional<RoomLesson.Said> said) {
        RoomLesson lesson = new RoomLesson(id, "The Tallow Loft, Quay Lane, Marrowby",
                new RoomFit(mean, sd, 0.56, 0.06, observations), 40, weeksAgo(weeks), said);
        return new TaughtRoom.Row(lesson, times.map(t -> new FitChange(t, 0.03, 0.8, 3)));
    }

    static LearnedPage full() {
        TaughtRoom room = new TaughtRoom("The Tallow Loft, Quay Lane, Marrowby", List.of(
                row("c", 1, 0.11, 0.08, 9, Optional.of(1.04), Optional.empty()),
                row("b", 2, 0.2, 0.1, 6, Optional.empty(), Optional.of(new RoomLesson.Said(false, 40, weeksAgo(1)))),
                row("a", 3, 0.07, 0.11, 3, Optional.of(1.07),
                        Optional.of(new RoomLesson.Said(true, 40, weeksAgo(2))))));
        Map<String, RoomPanel.Called> classes = Map.of(
                "c", new RoomPanel.Called("Thursday evening pour", weeksAgo(1)),
                "a", new RoomPanel.Called("First evening pour of the season", weeksAgo(3)));
        return new LearnedPage(SHELL, List.of(RoomPanel.of(room, classes, TIMES)), List.of(
                new LearnedPage.PlanLesson(plan().name(), plan().place(), LessonPanel.of(Optional.of(lesson()), plan(),
                        TIMES), ""),
                new LearnedPage.PlanLesson("Table of six", "", LessonPanel.of(Optional.empty(), plan(), TIMES),
                        "What its classes taught cannot be worked out just now.")));
    }

    static LearnedPage nothing() {
        return new LearnedPage(SHELL, List.of(), List.of());
    }

    private static Plan plan() {
        return Demo.eveningPlan();
    }

    private static StepLessons.Lesson lesson() {
        Map<String, StepPrior> steps = new LinkedHashMap<>();
        double[] shifts = {0.35, 0.2, -0.1, 0.15};
        for (int k = 0; k < shifts.length; k++) {
            steps.put(plan().steps().stream().filter(s -> s.needsTap()).toList().get(k).id().value(),
                    new StepPrior(shifts[k], 0.05, Double.NaN));
        }
        String first = steps.keySet().iterator().next();
        return new StepLessons.Lesson(steps, 4, Optional.of(new StepBeliefs.Accepted(Map.of(first, steps.get(first)), 3,
                weeksAgo(1))));
    }

    static ProblemPage problem() {
        ProblemFacts facts = new ProblemFacts(Map.of("Program", "Benchpace"), Optional.of(new ProblemFacts.StoreState(
                new TreeMap<>(Map.of("event", 1_204L, "session", 6L)), List.of("ok"), List.of("label-region"))), "",
                List.of("Class …: everybody's pace cannot be computed just now."),
                List.of("18:02:11 ERROR class …: model PACE cannot be computed (seat 4, Evaluation.java:88)"),
                ProblemFacts.Source.BOARD, List.of(), List.of());
        return ProblemPage.of(List.of(
                new ProblemPage.Choice("c", "Thursday evening pour", TIMES.day(weeksAgo(1)), true),
                new ProblemPage.Choice("a", "First evening pour of the season", TIMES.day(weeksAgo(3)), true)), facts);
    }
}
