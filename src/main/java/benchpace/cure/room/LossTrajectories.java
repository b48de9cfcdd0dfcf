package benchpace.cure.room;

import benchpace.cure.CoolingCase;
import benchpace.cure.solver.CureCurves;
import benchpace.cure.solver.CureRun;
import benchpace.cure.solver.CureSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One case solved for a row of loss multipliers, so that any multiplier is an interpolation away. Times are
 * interpolated as ln(time) against ln(multiplier), nearly straight since time goes about as one over the loss;
 * temperatures and fractions linearly in ln(multiplier). Beyond the row its ends stand.
 */
public final class LossTrajectories {
    static final double LOWEST_LOG = -1.1;
    static final double LOG_SPACING = 0.275;
    static final int RUNS = 9;
    static final double LOWEST_FRACTION = 0.10;
    static final double FRACTION_SPACING = 0.02;
    static final int FRACTIONS = 45;

    private final CureCurves[] curves = new CureCurves[RUNS];
    private final double[] logSkin = new double[RUNS];
    private final double[] logFirm = new double[RUNS];
    private final double[][] logReady = new double[FRACTIONS][RUNS];

    private LossTrajectories(List<CureRun> runs) {
        for (int i = 0; i < RUNS; i++) {
            CureRun run = runs.get(i);
            curves[i] = run.curves();
            logSkin[i] = logMinutes(run.milestones().skinMinutes());
            logFirm[i] = logMinutes(run.milestones().firmMinutes());
            for (int k = 0; k < FRACTIONS; k++) {
                double solid = curves[i].minutesToSolidFraction(fraction(k));
                logReady[k][i] = Math.max(logSkin[i], Math.log(Math.max(solid, 0.01)));
            }
        }
    }

    private static double logMinutes(OptionalDouble minutes) {
        return minutes.isPresent() ? Math.log(Math.max(minutes.getAsDouble(), 0.01)) : Double.POSITIVE_INFINITY;
    }

    /** Solves a case, its losses as computed, for the whole row. */
    public static LossTrajectories of(CoolingCase c) {
        List<CureRun> runs = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            runs.add(CureSolver.solve(c.withLossTimes(Math.exp(LOWEST_LOG + i * LOG_SPACING))));
        }
        return new LossTrajectories(runs);
    }

    static double fraction(int index) {
        return LOWEST_FRACTION + index * FRACTION_SPACING;
    }

    double skinMinutes(double logLoss) {
        return Math.exp(between(logSkin, logLoss));
    }

    double firmMinutes(double logLoss) {
        return Math.exp(between(logFirm, logLoss));
    }

    /** Skin formed and the given fraction (by its index) solid. */
    double readyMinutes(double logLoss, int fractionIndex) {
        return Math.exp(between(logReady[fractionIndex], logLoss));
    }

    /**
     * Minutes from the pour until there is a skin and a fraction is solid.
     *
     * @param logLoss  ln of the loss multiplier, held within the row
     * @param fraction solid, held within what a room may call ready, 0.10 to 0.98
     */
    public double readyMinutes(double logLoss, double fraction) {
        double x = Math.min(Math.max((fraction - LOWEST_FRACTION) / FRACTION_SPACING, 0), FRACTIONS - 1);
        int k = Math.min((int) x, FRACTIONS - 2);
        double part = x - k;
        double low = readyMinutes(logLoss, k);
        return part == 0 || Double.isInfinite(low) ? low : low + part * (readyMinutes(logLoss, k + 1) - low);
    }

    double surfaceCelsius(double logLoss, double minutes) {
        double x = position(logLoss);
        int i = Math.min((int) x, RUNS - 2);
        double low = curves[i].surfaceCelsiusAt(minutes);
        return low + (x - i) * (curves[i + 1].surfaceCelsiusAt(minutes) - low);
    }

    double solidFraction(double logLoss, double minutes) {
        double x = position(logLoss);
        int i = Math.min((int) x, RUNS - 2);
        double low = curves[i].solidFractionAt(minutes);
        return low + (x - i) * (curves[i + 1].solidFractionAt(minutes) - low);
    }

    private static double position(double logLoss) {
        return Math.min(Math.max((logLoss - LOWEST_LOG) / LOG_SPACING, 0), RUNS - 1);
    }

    private static double between(double[] values, double logLoss) {
        double x = position(logLoss);
        int i = Math.min((int) x, RUNS - 2);
        double part = x - i;
        if (part == 0 || Double.isInfinite(values[i])) {
            return values[i];
        }
        return part == 1 ? values[i + 1] : values[i] + part * (values[i + 1] - values[i]);
    }
}
