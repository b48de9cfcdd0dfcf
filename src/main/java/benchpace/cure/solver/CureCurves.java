package benchpace.cure.solver;

import java.util.Arrays;

/**
 * A candle's course over time, for drawing and for comparing with a thermometer: mean solid fraction and temperature in
 * the middle of the top surface. Kept at the solver's own steps; between them a monotone cubic (Fritsch and Carlson,
 * SIAM J. Numer. Anal. 17 (1980) 238-246). After the last computed instant the last value stands.
 */
public final class CureCurves {
    private final double[] minutes;
    private final double[] solid;
    private final double[] solidSlope;
    private final double[] surface;
    private final double[] surfaceSlope;

    CureCurves(double[] minutes, double[] solid, double[] surface) {
        this.minutes = minutes;
        this.solid = solid;
        this.surface = surface;
        solidSlope = slopes(minutes, solid);
        surfaceSlope = slopes(minutes, surface);
    }

    /** Last computed instant, minutes from the pour. */
    public double lastMinutes() {
        return minutes[minutes.length - 1];
    }

    /** Volume mean of the solid fraction, 0 to 1. */
    public double solidFractionAt(double minutesFromPour) {
        return Math.min(Math.max(at(minutesFromPour, solid, solidSlope), 0), 1);
    }

    /** Middle of the top surface, Celsius. */
    public double surfaceCelsiusAt(double minutesFromPour) {
        return at(minutesFromPour, surface, surfaceSlope);
    }

    /** First time at which the mean solid fraction reaches a value in 0..1; positive infinity when it never does. */
    public double minutesToSolidFraction(double fraction) {
        for (int i = 0; i < solid.length; i++) {
            if (solid[i] >= fraction) {
                return i == 0 ? minutes[0] : bisect(fraction, minutes[i - 1], minutes[i]);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private double bisect(double fraction, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (solidFractionAt(middle) >= fraction) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private double at(double t, double[] value, double[] slope) {
        if (t <= minutes[0]) {
            return value[0];
        }
        int last = minutes.length - 1;
        if (t >= minutes[last]) {
            return value[last];
        }
        int found = Arrays.binarySearch(minutes, t);
        int i = found >= 0 ? found : -found - 2;
        double h = minutes[i + 1] - minutes[i];
        double x = (t - minutes[i]) / h;
        return (1 + 2 * x) * (1 - x) * (1 - x) * value[i] + x * (1 - x) * (1 - x) * h * slope[i]
                + x * x * (3 - 2 * x) * value[i + 1] + x * x * (x - 1) * h * slope[i + 1];
    }

    private static double[] slopes(double[] t, double[] v) {
        int n = t.length;
        double[] slope = new double[n];
        for (int i = 1; i < n - 1; i++) {
            double before = (v[i] - v[i - 1]) / (t[i] - t[i - 1]);
            double after = (v[i + 1] - v[i]) / (t[i + 1] - t[i]);
            if (before * after > 0) {
                double a = 2 * (t[i + 1] - t[i]) + (t[i] - t[i - 1]);
                double b = (t[i + 1] - t[i]) + 2 * (t[i] - t[i - 1]);
                slope[i] = (a + b) / (a / before + b / after);
            }
        }
        if (n > 1) {
            slope[0] = (v[1] - v[0]) / (t[1] - t[0]);
            slope[n - 1] = (v[n - 1] - v[n - 2]) / (t[n - 1] - t[n - 2]);
        }
        return slope;
    }
}
