package benchpace.plan;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Plans laid out otherwise in one thing, each the same plan else: what the day before tries on paper and a look back
 * offers as a copy.
 */
public final class PlanVariants {
    private PlanVariants() { }

    // ---- which apply

    /** Whether a step may be changed from led to free: no talk, no pour, and nothing that could hurt. */
    public static boolean mayBeFree(Plan plan, Step step) {
        return step.led() && step.kind() != StepKind.TALK && step.kind() != StepKind.POUR && step.caution().isEmpty()
                && plan.indexOf(step.id()) > 0;
    }

    /** Whether a step may be changed from free to led. */
    public static boolean mayBeLed(Plan plan, Step step) {
        return !step.led() && step.kind() == StepKind.HANDS_ON && plan.indexOf(step.id()) > 0;
    }

    /** The step at which wicks are set, as its name or id says; before the pour, so that it can be done beforehand. */
    public static Optional<Step> wicks(Plan plan) {
        int pour = plan.pour().map(s -> plan.indexOf(s.id())).orElse(0);
        return plan.steps().stream().limit(pour).filter(s -> s.kind() == StepKind.HANDS_ON)
                .filter(s -> (s.id().value() + " " + s.name()).toLowerCase(Locale.ROOT).contains("wick")).findFirst();
    }

    // ---- what they lead to

    public static Plan opened(Plan plan, StepId id, Opening opening) {
        return withStep(plan, id, s -> s.opened(opening));
    }

    /** @param planned above 0, at most 8 h */
    public static Plan lasting(Plan plan, StepId id, Duration planned) {
        return withStep(plan, id, s -> s.lasting(planned));
    }

    /** Stations for so many seats at once, each as quick. @param id of a step that has some */
    public static Plan served(Plan plan, StepId id, int atOnce) {
        return withStep(plan, id, s -> {
            Stations served = s.stations().orElseThrow();
            return s.served(Optional.of(new Stations(atOnce, served.what(), served.each())));
        });
    }

    /** Without a step. @param id of one that is not the only one done by seats */
    public static Plan without(Plan plan, StepId id) {
        return withSteps(plan, plan.steps().stream().filter(s -> !s.id().equals(id)).toList());
    }

    public static Plan withCandles(Plan p, UnaryOperator<Candle> with) {
        return new Plan(p.id(), p.name(), p.about(), p.place(), p.usualSeats(), p.table(), p.steps(), p.activities(),
                p.candles().stream().map(with).toList(), p.kit());
    }

    /** The same shape with less in it, all lengths by the cube root; empty if no candle is so small. */
    public static Optional<Candle> smaller(Candle c, double share) {
        if (c.fillGrams() * share < Candle.LEAST_FILL) {
            return Optional.empty();
        }
        return c.vessel().scaled(Math.cbrt(share)).map(vessel -> new Candle(c.id(), c.name(), vessel, c.wax(),
                c.fillGrams() * share, c.fragranceFraction(), c.roomCelsius(), c.pourCelsius(), c.tableTop(),
                Optional.empty(), c.convention(), AsTyped.NONE));
    }

    private static Plan withStep(Plan plan, StepId id, UnaryOperator<Step> with) {
        return withSteps(plan, plan.steps().stream().map(s -> s.id().equals(id) ? with.apply(s) : s).toList());
    }

    private static Plan withSteps(Plan p, List<Step> steps) {
        return new Plan(p.id(), p.name(), p.about(), p.place(), p.usualSeats(), p.table(), steps, p.activities(),
                p.candles(), p.kit());
    }
}
