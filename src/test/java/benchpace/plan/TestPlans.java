package benchpace.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Invented plans that tests run classes by. */
public final class TestPlans {
    /** The second of the two candles to choose from. */
    public static final String CANDLE = "small-glass";

    private TestPlans() { }

    /**
     * An evening of seven steps: welcome (talk, led), wicks (led), blend (free), pour (led), cure (free), trim (led),
     * wrap (free); labels for two seats at once, and refreshments.
     */
    public static Plan evening() {
        return of(
                step("welcome", StepKind.TALK, Opening.LED, 5),
                step("wicks", StepKind.HANDS_ON, Opening.LED, 6),
                step("blend", StepKind.HANDS_ON, Opening.FREE, 8),
                step("pour", StepKind.POUR, Opening.LED, 10),
                step("cure", StepKind.CURE, Opening.FREE, 60),
                step("trim", StepKind.FINISH, Opening.LED, 6),
                step("wrap", StepKind.FINISH, Opening.FREE, 5));
    }

    /** A plan of these steps, with the activities of the evening. */
    public static Plan of(Step... steps) {
        return new Plan(new PlanId("test-evening"), "Test evening", "", "", 6, TableShape.HORSESHOE, List.of(steps),
                List.of(activity("labels", ActivityKind.LABELS, 12, 2),
                        activity("refreshments", ActivityKind.REFRESHMENTS, 15, 12)),
                List.of(candle("glass", 180), candle(CANDLE, 120)));
    }

    private static Candle candle(String id, double fillGrams) {
        return new Candle(id, "Candle " + id, new Vessel("tumbler", "Tumbler", Vessel.Material.GLASS, 75, 3, 90),
                new Wax("soy", "Soy", 900, 2100, 2200, 120_000, 38, 46, 0.2, 0.3, false), fillGrams, 0.07, 21, 62,
                TableTop.WOOD);
    }

    /** @param minutes the planned length; the allowance is 3 min */
    public static Step step(String id, StepKind kind, Opening opening, int minutes) {
        return new Step(new StepId(id), "Step " + id, kind, opening, Duration.ofMinutes(minutes),
                Duration.ofMinutes(3), "", "", "");
    }

    /** The same plan with stations at one of its steps. */
    public static Plan served(Plan plan, String step, Stations stations) {
        List<Step> steps = plan.steps().stream().map(s -> !s.id().value().equals(step) ? s
                : new Step(s.id(), s.name(), s.kind(), s.opening(), s.planned(), s.allowance(), s.say(), s.caution(),
                        s.wall(), Optional.empty(), Optional.of(stations))).toList();
        return new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(), steps,
                plan.activities(), plan.candles());
    }

    /** @param minutes the typical length; the longest is half as long again */
    public static Activity activity(String id, ActivityKind kind, int minutes, int places) {
        return new Activity(new ActivityId(id), "Activity " + id, kind, Activity.Audience.OWN_PACE,
                Duration.ofMinutes(minutes), Duration.ofMinutes(minutes + minutes / 2), places,
                Set.of(Activity.Need.HANDS_FREE), true, "", "", "", "");
    }

    /** Seats 1 to {@code count}. */
    public static List<SeatNumber> seats(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(SeatNumber::new).toList();
    }
}
