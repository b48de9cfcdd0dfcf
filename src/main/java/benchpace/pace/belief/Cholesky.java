package benchpace.pace.belief;

/** Small symmetric positive-definite systems (Golub &amp; Van Loan, <i>Matrix Computations</i>, 4th ed., 4.2.5). */
public final class Cholesky {
    private Cholesky() { }

    /** The lower triangle L with L Lᵀ = a. */
    public static double[][] factor(double[][] a) {
        int n = a.length;
        double[][] lower = new double[n][n];
        for (int r = 0; r < n; r++) {
            for (int c = 0; c <= r; c++) {
                double sum = a[r][c];
                for (int k = 0; k < c; k++) {
                    sum -= lower[r][k] * lower[c][k];
                }
                if (r == c) {
                    if (!(sum > 0)) {
                        throw new ArithmeticException("not positive definite at row " + r);
                    }
                    lower[r][r] = Math.sqrt(sum);
                } else {
                    lower[r][c] = sum / lower[c][c];
                }
            }
        }
        return lower;
    }

    /** The inverse of {@code a}. */
    static double[][] inverse(double[][] a) {
        int n = a.length;
        double[][] lower = factor(a);
        double[][] inverse = new double[n][n];
        double[] y = new double[n];
        for (int column = 0; column < n; column++) {
            for (int r = 0; r < n; r++) {
                double sum = r == column ? 1 : 0;
                for (int k = 0; k < r; k++) {
                    sum -= lower[r][k] * y[k];
                }
                y[r] = sum / lower[r][r];
            }
            for (int r = n - 1; r >= 0; r--) {
                double sum = y[r];
                for (int k = r + 1; k < n; k++) {
                    sum -= lower[k][r] * inverse[k][column];
                }
                inverse[r][column] = sum / lower[r][r];
            }
        }
        return inverse;
    }
}
