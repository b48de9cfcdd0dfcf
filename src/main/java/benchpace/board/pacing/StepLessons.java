package benchpace.board.pacing;

import benchpace.board.attempt.Faults;
import benchpace.live.LiveClass;
import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.StepPrior;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.LearnedSteps;
import benchpace.plan.Plan;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.InstantSource;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What closed classes of a plan at a place taught about its steps, and what of it is in force. Nothing is in force
 * until it is accepted, and a class that has begun keeps what it began with. Safe for use by many threads.
 */
public final class StepLessons implements PosteriorPaceWatch.Priors {
    private static final Logger LOG = System.getLogger(StepLessons.class.getName());

    private final StepBeliefs beliefs;
    private final InstantSource clock;
    private final Map<String, Map<String, StepPrior>> started = new ConcurrentHashMap<>();
    private final Faults faults = new Faults();

    /**
     * A lesson.
     *
     * @param steps    what to believe of each step, by its id; empty if no class taught anything
     * @param classes  how many closed classes it rests on
     * @param accepted what is in force instead, if anything was accepted
     */
    public record Lesson(Map<String, StepPrior> steps, int classes, Optional<StepBeliefs.Accepted> accepted) {
        public Lesson {
            steps = Map.copyOf(steps);
        }

        /** Each step that a class taught something about, in the plan's order. */
        public List<Figure> figures(Plan plan) {
            return plan.steps().stream().filter(s -> steps.containsKey(s.id().value())).map(s -> {
                PaceStep step = PaceStep.of(s);
                Optional<StepPrior> inForce = accepted.map(a -> a.steps().get(step.id()));
                return new Figure(s.name(), step.planMinutes(),
                        LearnedSteps.usualMinutes(step, steps.get(step.id())),
                        inForce.map(p -> LearnedSteps.usualMinutes(step, p)).orElse(step.planMinutes()));
            }).toList();
        }

        /** Whether accepting would change what the next class starts from. */
        public boolean news() {
            return !steps.isEmpty() && !accepted.map(StepBeliefs.Accepted::steps).equals(Optional.of(steps));
        }
    }

    /**
     * What a step usually takes, minutes.
     *
     * @param learnedMinutes  by past classes
     * @param expectedMinutes what the next class is judged by: what was accepted, or the plan
     */
    public record Figure(String step, double plannedMinutes, double learnedMinutes, double expectedMinutes) { }

    public StepLessons(StepBeliefs beliefs, InstantSource clock) {
        this.beliefs = beliefs;
        this.clock = clock;
    }

    /** Fixes what a class that has begun starts from, unless that is done; tried again with its next event. */
    public void begin(String classId, LiveClass live) {
        if (!started.containsKey(classId)) {
            try {
                started.put(classId, beliefs.startedFrom(classId, live.plan().id().value(), live.plan().place()));
            } catch (StoreException e) {
                log("what the steps of class " + classId + " are expected to take cannot be kept yet", e);
            }
        }
    }

    /**
     * Only reads: what was fixed when the class began, before that what it would start from. A screen must not go dark
     * because that cannot be read: then the class is judged by its plan meanwhile.
     */
    @Override public Map<String, StepPrior> of(String classId, LiveClass live) {
        Map<String, StepPrior> known = started.get(classId);
        if (known != null) {
            return known;
        }
        try {
            return beliefs.started(classId).orElseGet(() -> beliefs.accepted(live.plan().id().value(),
                    live.plan().place()).map(StepBeliefs.Accepted::steps).orElse(Map.of()));
        } catch (StoreException e) {
            log("what steps are expected to take cannot be read", e);
            return Map.of();
        }
    }

    /** What the next class of a plan at a place is judged by; the plan alone, if that cannot be read. */
    public Map<String, StepPrior> next(String planId, String place) {
        try {
            return beliefs.accepted(planId, place).map(StepBeliefs.Accepted::steps).orElse(Map.of());
        } catch (StoreException e) {
            log("what steps are expected to take cannot be read", e);
            return Map.of();
        }
    }

    /** Once: it is tried again many times. */
    private void log(String what, StoreException fault) {
        if (faults.isNew(what, fault)) {
            LOG.log(Level.ERROR, what, fault);
        }
    }

    /** What the closed classes among these taught about a plan at a place. */
    public Lesson lesson(String planId, String place, Collection<LiveClass> classes) {
        List<ClassTrack> past = classes.stream()
                .filter(c -> c.closedAt().isPresent() && c.plan().id().value().equals(planId)
                        && c.plan().place().equals(place))
                .sorted(Comparator.comparing(LiveClass::startsAt))
                .map(c -> ClassTracks.of(c, Map.of()))
                .filter(t -> t.seats().stream().anyMatch(s -> !s.taps().isEmpty()))
                .toList();
        return new Lesson(LearnedSteps.learn(past, PacePriors.standard()), past.size(),
                beliefs.accepted(planId, place));
    }

    /**
     * Puts a lesson in force for the next class.
     *
     * @return whether there was anything to accept
     */
    public boolean accept(String planId, String place, Collection<LiveClass> classes) {
        Lesson lesson = lesson(planId, place, classes);
        if (lesson.steps().isEmpty()) {
            return false;
        }
        beliefs.accept(planId, place, new StepBeliefs.Accepted(lesson.steps(), lesson.classes(), clock.instant()));
        return true;
    }

    /** The plan's own figures for the next class. @return whether anything else was in force */
    public boolean forget(String planId, String place) {
        return beliefs.forget(planId, place);
    }
}
