package benchpace.cure;

/**
 * Dry air at one atmosphere at the film temperature. Table: Incropera and DeWitt, 6th ed., table A.4, linear between
 * its rows; 250 to 450 K, clamped outside. Expansion coefficient 1/T (ideal gas, eq. 9.9).
 *
 * @param kinematicViscosity m2/s
 * @param conductivity W/(m K)
 * @param diffusivity thermal, m2/s
 * @param prandtl Prandtl number
 * @param expansion 1/K
 */
record Air(double kinematicViscosity, double conductivity, double diffusivity, double prandtl, double expansion) {
    private static final double GRAVITY = 9.81;
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;
    /** Kelvin, 1e6 nu, 1e3 k, 1e6 alpha, Pr. */
    private static final double[][] TABLE = {
        {250, 11.44, 22.3, 15.9, 0.720}, {300, 15.89, 26.3, 22.5, 0.707}, {350, 20.92, 30.0, 29.9, 0.700},
        {400, 26.41, 33.8, 38.3, 0.690}, {450, 32.39, 37.3, 47.2, 0.686}};

    /** Air between a surface and the room: at the mean of both, Celsius. */
    static Air film(double surfaceCelsius, double roomCelsius) {
        double kelvin = (surfaceCelsius + roomCelsius) / 2 + KELVIN_AT_ZERO_CELSIUS;
        double clamped = Math.min(Math.max(kelvin, TABLE[0][0]), TABLE[TABLE.length - 1][0]);
        int row = 0;
        while (row < TABLE.length - 2 && clamped > TABLE[row + 1][0]) {
            row++;
        }
        double[] low = TABLE[row];
        double[] high = TABLE[row + 1];
        double x = (clamped - low[0]) / (high[0] - low[0]);
        double[] v = new double[5];
        for (int i = 1; i < 5; i++) {
            v[i] = low[i] + x * (high[i] - low[i]);
        }
        return new Air(v[1] * 1e-6, v[2] * 1e-3, v[3] * 1e-6, v[4], 1 / kelvin);
    }

    /** Rayleigh number g beta dT L^3 / (nu alpha), eq. 9.25. */
    double rayleigh(double kelvinDifference, double lengthMetres) {
        return GRAVITY * expansion * Math.abs(kelvinDifference) * lengthMetres * lengthMetres * lengthMetres
                / (kinematicViscosity * diffusivity);
    }
}
