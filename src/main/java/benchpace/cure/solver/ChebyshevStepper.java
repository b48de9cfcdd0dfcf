package benchpace.cure.solver;

/**
 * Runge-Kutta-Chebyshev steps of second order for dy/dt = F(y) with a real negative spectrum: explicit, yet stable for
 * steps that grow with the square of the number of stages. Sommeijer, Shampine and Verwer, "RKC: an explicit solver for
 * parabolic PDEs", J. Comput. Appl. Math. 88 (1998) 315-326, equations (2.1) to (2.8).
 *
 * <p>Every stage is a linear combination whose weights of y add to one, so what F conserves the step conserves.
 */
final class ChebyshevStepper {
    private static final int MOST_STAGES = 250;
    private static final double DAMPING = 2.0 / 13;

    private final HeatFlow flow;
    private final double[] errorScale;
    private final double tolerance;
    private final double fastest;
    private double[] older;
    private double[] old;
    private double[] now;
    private final double[] rate;
    double[] y;
    double[] f;
    double[] yBefore;
    double[] fBefore;
    double seconds;
    double step;
    private double nextStep;
    private double errorBefore;

    /**
     * @param errorScale size of one per component against which the tolerance is measured; 0 leaves it out
     */
    ChebyshevStepper(HeatFlow flow, double[] errorScale, double tolerance, double firstStep) {
        this.flow = flow;
        this.errorScale = errorScale;
        this.tolerance = tolerance;
        int n = flow.size;
        y = flow.start();
        f = new double[n];
        yBefore = new double[n];
        fBefore = new double[n];
        older = new double[n];
        old = new double[n];
        now = new double[n];
        rate = new double[n];
        fastest = flow.fastestRate();
        flow.rates(y, f);
        nextStep = firstStep;
    }

    /** Advances one step of at most {@code longest} seconds; afterwards y, f, yBefore, fBefore and step describe it. */
    void advance(double longest) {
        double stable = (MOST_STAGES * (double) MOST_STAGES - 1) / 1.54 / fastest;
        while (true) {
            double h = Math.min(Math.min(nextStep, longest), stable);
            int stages = Math.max(2, 1 + (int) Math.sqrt(1.54 * h * fastest + 1));
            stages(h, stages);
            flow.rates(now, rate);
            double error = error(h);
            if (error <= 1 || h < 1e-9) {
                accept(h);
                double grow = 0.8 / Math.cbrt(Math.max(error, 1e-9));
                if (errorBefore > 0) {
                    grow = Math.min(grow, grow * Math.cbrt(errorBefore / Math.max(error, 1e-9)) * 1.2);
                }
                errorBefore = error;
                nextStep = h * Math.min(Math.max(grow, 0.3), 4);
                return;
            }
            nextStep = h * Math.max(0.1, 0.8 / Math.cbrt(error));
        }
    }

    private void accept(double h) {
        double[] spare = yBefore;
        yBefore = y;
        y = now;
        now = spare;
        System.arraycopy(f, 0, fBefore, 0, f.length);
        System.arraycopy(rate, 0, f, 0, f.length);
        seconds += h;
        step = h;
    }

    private double error(double h) {
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < y.length; i++) {
            double e = 0.8 * (y[i] - now[i]) + 0.4 * h * (f[i] + rate[i]);
            double scaled = e * errorScale[i];
            sum += scaled * scaled;
            counted += errorScale[i] > 0 ? 1 : 0;
        }
        return Math.sqrt(sum / counted) / tolerance;
    }

    private void stages(double h, int s) {
        double w0 = 1 + DAMPING / (s * (double) s);
        double root = Math.sqrt(w0 * w0 - 1);
        double arc = s * Math.log(w0 + root);
        double w1 = Math.sinh(arc) * (w0 * w0 - 1) / (Math.cosh(arc) * s * root - w0 * Math.sinh(arc));
        double bOlder = 1 / (4 * w0 * w0);
        double bOld = bOlder;
        // Chebyshev polynomials and their first two derivatives at w0
        double tOlder = 1;
        double t = w0;
        double dOlder = 0;
        double d = 1;
        double ddOlder = 0;
        double dd = 0;
        double aOld = 1 - bOld * t;
        first(h * bOld * w1);
        for (int j = 2; j <= s; j++) {
            double tNew = 2 * w0 * t - tOlder;
            double dNew = 2 * w0 * d - dOlder + 2 * t;
            double ddNew = 2 * w0 * dd - ddOlder + 4 * d;
            double b = ddNew / (dNew * dNew);
            double mu = 2 * w0 * b / bOld;
            double nu = -b / bOlder;
            double muTilde = 2 * w1 * b / bOld;
            flow.rates(old, rate);
            combine(mu, nu, h * muTilde, -aOld * h * muTilde);
            aOld = 1 - b * tNew;
            bOlder = bOld;
            bOld = b;
            tOlder = t;
            t = tNew;
            dOlder = d;
            d = dNew;
            ddOlder = dd;
            dd = ddNew;
            double[] spare = older;
            older = old;
            old = now;
            now = spare;
        }
        double[] spare = now;
        now = old;
        old = spare;
    }

    private void first(double hMu) {
        for (int i = 0; i < y.length; i++) {
            older[i] = y[i];
            old[i] = y[i] + hMu * f[i];
        }
    }

    private void combine(double mu, double nu, double hMu, double hGamma) {
        double rest = 1 - mu - nu;
        double[] y0 = y;
        double[] f0 = f;
        double[] y1 = old;
        double[] y2 = older;
        double[] f1 = rate;
        double[] into = now;
        for (int i = 0; i < into.length; i++) {
            into[i] = rest * y0[i] + mu * y1[i] + nu * y2[i] + hMu * f1[i] + hGamma * f0[i];
        }
    }

    /** The state at a fraction 0..1 of the last step, by the cubic through both ends and their slopes. */
    void within(double fraction, double[] into) {
        double x = fraction;
        double h00 = (1 + 2 * x) * (1 - x) * (1 - x);
        double h10 = x * (1 - x) * (1 - x) * step;
        double h01 = x * x * (3 - 2 * x);
        double h11 = x * x * (x - 1) * step;
        for (int i = 0; i < into.length; i++) {
            into[i] = h00 * yBefore[i] + h10 * fBefore[i] + h01 * y[i] + h11 * f[i];
        }
    }
}
