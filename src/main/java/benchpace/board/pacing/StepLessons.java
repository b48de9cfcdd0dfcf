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
import java.lang.ref.WeakReference;
import java.time.InstantSource;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What closed classes of a plan at a place taught about its steps, and what of it is in force. Nothing is in force
 * until it is accepted, and a class that has begun keeps what it began with. Safe for use by many threads.
 */
public final class StepLessons implements PosteriorPaceWatch.Priors {
    private static final Logger LOG = System.getLogger(StepLessons.class.getName());

    private final StepBeliefs beliefs;
    private final InstantSource clock;
    private final Map<String, Map<String, StepPrior>> started = new ConcurrentHashMap<>();
    private final Map<Taught, Learned> learned = new ConcurrentHashMap<>();
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
                return new Figure(step.id(), s.name(), step.planMinutes(),
                        LearnedSteps.usualMinutes(step, steps.get(step.id())),
                        inForce.map(p -> LearnedSteps.usualMinutes(step, p)).orElse(step.planMinutes()),
                        inForce.isPresent(), !inForce.equals(Optional.of(steps.get(step.id()))));
            }).toList();
        }

        /** The same as long as nothing more was learned or decided. */
        public String tag() {
            return Integer.toHexString(List.of(new TreeMap<>(steps).toString(), classes,
                    accepted.map(a -> new TreeMap<>(a.steps()).toString() + a.classes() + a.at()).orElse(""))
                    .hashCode());
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
     * @param accepted        whether something was accepted of it
     * @param news            whether accepting would change what the next class starts from
     */
    public record Figure(String id, String step, double plannedMinutes, double learnedMinutes, double expectedMinutes,
                         boolean accepted, boolean news) { }

    /** A plan at a place, as lessons and what was accepted are kept by. @param place empty is "this room" */
    public record Taught(String planId, String place) {
        public static Taught of(Plan plan) {
            return new Taught(plan.id().value(), plan.place());
        }
    }

    /** How a decision about what was taught ended. */
    public enum Decided {
        DONE,
        /** What is decided about has changed since somebody looked. */
        STALE,
        /** Nothing was taught that could be accepted, or nothing accepted that could be taken back. */
        NOTHING
    }

    /**
     * What was learned, in figures.
     *
     * @param past the closed classes that it was learned from: whatever is set right in one is another object. They are
     *             not kept for it: one that was deleted, or had guests that are forgotten, is gone with its words
     */
    private record Learned(List<WeakReference<LiveClass>> past, Map<String, StepPrior> steps, int classes) {
        boolean isOf(List<LiveClass> others) {
            return past.size() == others.size()
                    && IntStream.range(0, past.size()).allMatch(i -> past.get(i).refersTo(others.get(i)));
        }
    }

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
        Taught of = new Taught(planId, place);
        List<LiveClass> past = classes.stream()
                .filter(c -> c.closedAt().isPresent() && Taught.of(c.plan()).equals(of))
                .sorted(Comparator.comparing(LiveClass::startsAt))
                .toList();
        Learned known = learned.get(of);
        if (known == null || !known.isOf(past)) {
            known = learn(past);
            learned.put(of, known);
        }
        return new Lesson(known.steps(), known.classes(), beliefs.accepted(planId, place));
    }

    private static Learned learn(List<LiveClass> past) {
        List<ClassTrack> tracks = past.stream()
                .map(c -> ClassTracks.of(c, Map.of()))
                .filter(t -> t.seats().stream().anyMatch(s -> !s.taps().isEmpty()))
                .toList();
        return new Learned(past.stream().map(WeakReference::new).toList(),
                LearnedSteps.learn(tracks, PacePriors.standard()), tracks.size());
    }

    /** Every plan and place of which something was accepted. */
    public List<Taught> accepted() {
        return beliefs.all().stream().map(key -> new Taught(key.planId(), key.place())).toList();
    }

    /**
     * Puts a lesson in force for the next class.
     *
     * @return whether there was anything to accept
     */
    public boolean accept(String planId, String place, Collection<LiveClass> classes) {
        return accept(new Taught(planId, place), Optional.empty(), tag -> true, classes) == Decided.DONE;
    }

    /**
     * The same of one step, or of all.
     *
     * @param looked asked whether the lesson is as it was when the organiser looked ({@link Lesson#tag})
     */
    public synchronized Decided accept(Taught of, Optional<String> step, Predicate<String> looked,
                                       Collection<LiveClass> classes) {
        Lesson lesson = lesson(of.planId(), of.place(), classes);
        if (lesson.steps().isEmpty() || step.isPresent() && !lesson.steps().containsKey(step.get())) {
            return Decided.NOTHING;
        }
        if (!looked.test(lesson.tag())) {
            return Decided.STALE;
        }
        Map<String, StepPrior> inForce = new LinkedHashMap<>(step.isEmpty() ? Map.of()
                : lesson.accepted().map(StepBeliefs.Accepted::steps).orElse(Map.of()));
        lesson.steps().forEach((id, prior) -> {
            if (step.isEmpty() || step.get().equals(id)) {
                inForce.put(id, prior);
            }
        });
        beliefs.accept(of.planId(), of.place(), new StepBeliefs.Accepted(inForce, lesson.classes(), clock.instant()));
        return Decided.DONE;
    }

    /** The plan's own figures for the next class. @return whether anything else was in force */
    public boolean forget(String planId, String place) {
        return beliefs.forget(planId, place);
    }

    /** The same of one step, or of all. @param looked as for accepting */
    public synchronized Decided forget(Taught of, Optional<String> step, Predicate<String> looked,
                                       Collection<LiveClass> classes) {
        Lesson lesson = lesson(of.planId(), of.place(), classes);
        Map<String, StepPrior> inForce = new LinkedHashMap<>(lesson.accepted().map(StepBeliefs.Accepted::steps)
                .orElse(Map.of()));
        if (lesson.accepted().isEmpty() || step.isPresent() && !inForce.containsKey(step.get())) {
            return Decided.NOTHING;
        }
        if (!looked.test(lesson.tag())) {
            return Decided.STALE;
        }
        step.ifPresent(inForce::remove);
        if (step.isEmpty() || inForce.isEmpty()) {
            beliefs.forget(of.planId(), of.place());
        } else {
            StepBeliefs.Accepted before = lesson.accepted().get();
            beliefs.accept(of.planId(), of.place(), new StepBeliefs.Accepted(inForce, before.classes(), before.at()));
        }
        return Decided.DONE;
    }
}
