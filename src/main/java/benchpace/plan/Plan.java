package benchpace.plan;

import benchpace.plan.kit.Kit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * An ordered list of steps and all that goes with them: what a class is meant to be.
 *
 * @param about      one sentence for the organiser; may be empty
 * @param place      where it is held; may be empty
 * @param usualSeats how many places it is written for, 1 to {@link SeatNumber#MOST}
 * @param steps      1 to {@value #MOST_STEPS}, ids unique; at most one pour; a cure or finish step only after it
 * @param candles    what a seat may make, ids unique, the first unless another is chosen; none leaves the cure to
 *                   the plan's own figure; at most {@value #MOST_CANDLES}
 * @param activities what fills the wait, ids unique, at most {@value #MOST_ACTIVITIES}
 * @param kit        what it says of the day before
 */
public record Plan(PlanId id, String name, String about, String place, int usualSeats, TableShape table,
                   List<Step> steps, List<Activity> activities, List<Candle> candles, Kit kit) {
    public static final int MOST_STEPS = 30;
    public static final int MOST_ACTIVITIES = 20;
    public static final int MOST_CANDLES = 20;
    private static final Duration ABOUT_AN_HOUR = Duration.ofMinutes(60);

    public Plan {
        Texts.present("the id of the plan", id);
        Texts.required("the name of the plan", name, 80);
        Texts.optional("what the plan is about", about, 400);
        Texts.line("the place", place, 80);
        new SeatNumber(usualSeats);
        Texts.present("the shape of the table", table);
        Texts.present("what the plan says of the day before", kit);
        Texts.present("the list of steps", steps);
        Texts.present("the list of activities", activities);
        steps.forEach(step -> Texts.present("a step in the list", step));
        activities.forEach(activity -> Texts.present("an activity in the list", activity));
        steps = List.copyOf(steps);
        activities = List.copyOf(activities);
        candles = List.copyOf(candles);
        if (steps.isEmpty() || steps.size() > MOST_STEPS) {
            throw new IllegalArgumentException("a plan has 1 to " + MOST_STEPS + " steps, not " + steps.size());
        }
        if (activities.size() > MOST_ACTIVITIES) {
            throw new IllegalArgumentException("a plan has at most " + MOST_ACTIVITIES + " activities");
        }
        requireUnique("step", steps.stream().map(s -> s.id().value()).toList());
        if (candles.size() > MOST_CANDLES) {
            throw new IllegalArgumentException("a plan has at most " + MOST_CANDLES + " candles to choose from");
        }
        requireUnique("candle", candles.stream().map(Candle::id).toList());
        requireUnique("activity", activities.stream().map(a -> a.id().value()).toList());
        requireOrder(steps);
    }

    /** A plan whose cure is its own figure. */
    public Plan(PlanId id, String name, String about, String place, int usualSeats, TableShape table,
                List<Step> steps, List<Activity> activities) {
        this(id, name, about, place, usualSeats, table, steps, activities, List.of());
    }

    /** A plan that says nothing of the day before. */
    public Plan(PlanId id, String name, String about, String place, int usualSeats, TableShape table,
                List<Step> steps, List<Activity> activities, List<Candle> candles) {
        this(id, name, about, place, usualSeats, table, steps, activities, candles, Kit.NONE);
    }

    private static void requireUnique(String what, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException("two things are called " + what + " \"" + id + "\"");
            }
        }
    }

    private static void requireOrder(List<Step> steps) {
        boolean poured = false;
        boolean cured = false;
        boolean taps = false;
        for (Step step : steps) {
            taps |= step.needsTap();
            switch (step.kind()) {
                case POUR -> {
                    require(!poured, "step \"" + step.id() + "\" is a second pour; a class has one");
                    poured = true;
                }
                case CURE -> {
                    require(poured, "step \"" + step.id() + "\" cures before anything was poured");
                    require(!cured, "step \"" + step.id() + "\" is a second cure; a class has one");
                    cured = true;
                }
                case FINISH -> require(poured, "step \"" + step.id() + "\" finishes before anything was poured");
                case HANDS_ON -> require(!cured,
                        "step \"" + step.id() + "\" comes after the cure: make it a finish step");
                case TALK -> { }
            }
        }
        require(taps, "no step is done by the seats: a plan needs a hands-on or pour step");
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    public Optional<Step> step(StepId step) {
        return steps.stream().filter(s -> s.id().equals(step)).findFirst();
    }

    public Optional<Activity> activity(ActivityId activity) {
        return activities.stream().filter(a -> a.id().equals(activity)).findFirst();
    }

    /** The candle of that id. */
    public Optional<Candle> candle(String candle) {
        return candles.stream().filter(c -> c.id().equals(candle)).findFirst();
    }

    /** Position of a step of this plan, from 0. */
    public int indexOf(StepId step) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).id().value().equals(step.value())) { // asked most of all: not by the record's own equals
                return i;
            }
        }
        throw new IllegalArgumentException("the plan has no step \"" + step + "\"");
    }

    /**
     * Positions of the free steps between a led one and the next led one, talks left out: they hold nobody.
     *
     * @param led position of the led step; -1 for the steps before the first
     */
    public List<Integer> freeAfter(int led) {
        List<Integer> free = new ArrayList<>();
        for (int i = led + 1; i < steps.size() && !steps.get(i).led(); i++) {
            if (steps.get(i).kind() != StepKind.TALK) {
                free.add(i);
            }
        }
        return free;
    }

    public Optional<Step> pour() {
        return first(s -> s.kind() == StepKind.POUR);
    }

    public Optional<Step> cure() {
        return first(s -> s.kind() == StepKind.CURE);
    }

    /** What the cure takes by the plan; where it gives no figure about an hour: common practice, no source. */
    public Duration plannedCure() {
        return cure().map(Step::planned).orElse(ABOUT_AN_HOUR);
    }

    private Optional<Step> first(Predicate<Step> which) {
        return steps.stream().filter(which).findFirst();
    }

    /** The same plan under another id and name. */
    public Plan as(PlanId otherId, String otherName) {
        return new Plan(otherId, otherName, about, place, usualSeats, table, steps, activities, candles, kit);
    }

    /** The sum of the planned lengths with the turns that so many seats wait for. @param seats 1 or more */
    public Duration onPaper(int seats) {
        return steps.stream().map(step -> step.onPaper(seats)).reduce(Duration.ZERO, Duration::plus);
    }

    /** The same with other things for the day before. */
    public Plan with(Kit other) {
        return new Plan(id, name, about, place, usualSeats, table, steps, activities, candles, other);
    }

    /** The sum of the planned lengths: when the class should end, if nobody is held up. */
    public Duration planned() {
        return steps.stream().map(Step::planned).reduce(Duration.ZERO, Duration::plus);
    }

    /** How long guests were told it takes: what the plan says of that, else {@link #planned}. */
    public Duration promised() {
        return kit.promisedMinutes().isPresent() ? Duration.ofMinutes(kit.promisedMinutes().getAsInt()) : planned();
    }

    /** Held where it says, and where it does not at home. @param home the studio's place; may be empty */
    public Plan orHeldAt(String home) {
        return place.isEmpty() ? heldAt(home, table) : this;
    }

    /** The same plan at another place, with the tables in another way. */
    public Plan heldAt(String where, TableShape tables) {
        return new Plan(id, name, about, where, usualSeats, tables, steps, activities, candles, kit);
    }
}
