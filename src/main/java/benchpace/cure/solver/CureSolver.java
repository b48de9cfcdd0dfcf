package benchpace.cure.solver;

import benchpace.cure.CoolingCase;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Solves a {@link CoolingCase} from the pour until every milestone is passed or 24 hours are over.
 *
 * <p>{@link HeatFlow} holds the equations, {@link ChebyshevStepper} the time steps; here the milestones are found. A
 * milestone lies in a step when its figure passes the mark between the ends; its instant is then found on the cubic
 * through both ends and their slopes.
 */
public final class CureSolver {
    private static final double LONGEST_STEP_SECONDS = 600;
    private static final double FIRM = 0.95;
    private static final int SKIN = 0;
    private static final int HALF = 1;
    private static final int FIRM_AT = 2;
    private static final int SET = 3;
    private static final int COOL = 4;

    /** Told the state at chosen minutes, while a case is solved. */
    interface MinuteWatcher {
        /** The next minute wanted, or infinity. */
        double nextMinute();

        void see(double minute, HeatFlow flow, double[] y);
    }

    private final HeatFlow flow;
    private final FieldReading reading;
    private final ChebyshevStepper stepper;
    private final List<ToDoubleFunction<double[]>> excess;
    private final double[] before = new double[5];
    private final double[] after = new double[5];
    private final double[] passed = new double[5];
    private final double[] scratch;
    private double[] minutes = new double[256];
    private double[] solid = new double[256];
    private double[] surface = new double[256];
    private int kept;

    private CureSolver(CoolingCase c, Resolution resolution) {
        flow = new HeatFlow(c, resolution);
        reading = new FieldReading(flow);
        double[] scale = new double[flow.size];
        Arrays.fill(scale, 0, flow.grid.cells(), 1 / (c.densityKgM3() * c.heatToSetJKg()));
        Arrays.fill(scale, flow.wallAt, flow.lostAt, 0.3 / Math.max(c.pourC() - c.roomC(), 1));
        double firstStep = Math.min(1, 1 / flow.fastestRate());
        stepper = new ChebyshevStepper(flow, scale, resolution.stepTolerance(), firstStep);
        scratch = new double[flow.size];
        excess = marks(c);
        Arrays.fill(passed, Double.NaN);
    }

    /** Each milestone's figure less its mark: above zero before, at or below zero after. */
    private List<ToDoubleFunction<double[]>> marks(CoolingCase c) {
        return List.of(
                y -> reading.warmestTop(y) - c.skinCelsius(),
                y -> 0.5 - reading.solidFraction(y),
                y -> FIRM - reading.solidFraction(y),
                y -> reading.warmest(y) - c.solidusC(),
                y -> reading.warmestVessel(y) - CureMilestones.HAND_COOL_CELSIUS);
    }

    /** Solves at the board's working resolution. */
    public static CureRun solve(CoolingCase c) {
        return solve(c, Resolution.working(c));
    }

    /** Solves at a chosen resolution. */
    public static CureRun solve(CoolingCase c, Resolution resolution) {
        return new CureSolver(c, resolution).run(Double.NaN, null);
    }

    static CureRun watch(CoolingCase c, Resolution resolution, double untilMinutes, MinuteWatcher watcher) {
        return new CureSolver(c, resolution).run(untilMinutes, watcher);
    }

    private CureRun run(double untilMinutes, MinuteWatcher watcher) {
        double horizon = CureMilestones.HORIZON_MINUTES * 60;
        double end = Double.isNaN(untilMinutes) ? horizon : Math.min(untilMinutes * 60, horizon);
        double heldAtPour = flow.heldJoules(stepper.y);
        measure(stepper.y, before);
        for (int i = 0; i < passed.length; i++) {
            passed[i] = before[i] > 0 ? Double.NaN : 0;
        }
        keep();
        while (stepper.seconds < end && !(Double.isNaN(untilMinutes) && finished())) {
            stepper.advance(Math.min(LONGEST_STEP_SECONDS, end - stepper.seconds));
            measure(stepper.y, after);
            for (int i = 0; i < after.length; i++) {
                cross(i);
            }
            System.arraycopy(after, 0, before, 0, before.length);
            keep();
            show(watcher);
        }
        double given = heldAtPour - flow.heldJoules(stepper.y);
        double lost = stepper.y[flow.lostAt];
        // a candle that gave up next to nothing is measured against what it held, or rounding would be all there is
        double error = Math.abs(lost - given) / Math.max(Math.abs(given), 1e-6 * Math.abs(heldAtPour));
        return new CureRun(new CureMilestones(minute(SKIN), minute(HALF), minute(FIRM_AT), minute(SET), minute(COOL),
                error), curves());
    }

    private void measure(double[] y, double[] into) {
        double fraction = reading.solidFraction(y);
        into[HALF] = 0.5 - fraction;
        into[FIRM_AT] = FIRM - fraction;
        into[SKIN] = excess.get(SKIN).applyAsDouble(y);
        into[SET] = fraction < 0.9 ? 1 : excess.get(SET).applyAsDouble(y);
        into[COOL] = excess.get(COOL).applyAsDouble(y);
    }

    private void cross(int i) {
        if (before[i] > 0 && after[i] <= 0 && (i == COOL || Double.isNaN(passed[i]))) {
            passed[i] = instant(i);
        } else if (i == COOL && after[i] > 0) {
            passed[i] = Double.NaN;
        }
    }

    /** The instant within the last step, seconds, by bisection. */
    private double instant(int i) {
        double low = 0;
        double high = 1;
        for (int n = 0; n < 14; n++) {
            double middle = (low + high) / 2;
            stepper.within(middle, scratch);
            if (excess.get(i).applyAsDouble(scratch) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return stepper.seconds - stepper.step * (1 - (low + high) / 2);
    }

    private boolean finished() {
        boolean neverCool = flow.c.roomC() >= CureMilestones.HAND_COOL_CELSIUS;
        return !Double.isNaN(passed[SKIN]) && !Double.isNaN(passed[HALF]) && !Double.isNaN(passed[FIRM_AT])
                && !Double.isNaN(passed[SET]) && (neverCool || !Double.isNaN(passed[COOL]));
    }

    private void show(MinuteWatcher watcher) {
        while (watcher != null && watcher.nextMinute() * 60 <= stepper.seconds) {
            double fraction = 1 - (stepper.seconds - watcher.nextMinute() * 60) / stepper.step;
            stepper.within(Math.max(fraction, 0), scratch);
            watcher.see(watcher.nextMinute(), flow, scratch);
        }
    }

    private OptionalDouble minute(int i) {
        return Double.isNaN(passed[i]) ? OptionalDouble.empty() : OptionalDouble.of(passed[i] / 60);
    }

    private void keep() {
        if (kept == minutes.length) {
            minutes = Arrays.copyOf(minutes, 2 * kept);
            solid = Arrays.copyOf(solid, 2 * kept);
            surface = Arrays.copyOf(surface, 2 * kept);
        }
        minutes[kept] = stepper.seconds / 60;
        solid[kept] = 0.5 - before[HALF];
        surface[kept] = reading.topCentre(stepper.y);
        kept++;
    }

    private CureCurves curves() {
        return new CureCurves(Arrays.copyOf(minutes, kept), Arrays.copyOf(solid, kept), Arrays.copyOf(surface, kept));
    }
}
