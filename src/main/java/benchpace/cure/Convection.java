package benchpace.cure;

/**
 * Mean Nusselt numbers for surfaces in air and the heat transfer coefficients from them. Equation numbers: Incropera
 * and DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed.
 */
final class Convection {
    /** Stefan-Boltzmann constant, W/(m2 K4); CODATA 2018. */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

    private Convection() { }

    /** Free convection on a vertical surface, any Rayleigh number: Churchill and Chu 1975, eq. 9.26. */
    static double verticalNusselt(double rayleigh, double prandtl) {
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6)
                / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /** The same for laminar flow, Ra up to 1e9, slightly more accurate there: Churchill and Chu 1975, eq. 9.27. */
    static double verticalLaminarNusselt(double rayleigh, double prandtl) {
        return 0.68 + 0.670 * Math.pow(rayleigh, 0.25) / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9);
    }

    /**
     * Free convection above a hot horizontal plate, length = area / perimeter: McAdams, eqs. 9.30 (1e4 to 1e7) and 9.31
     * (to 1e11). Below 1e4, the surface of a small candle, 9.30 is continued, never below pure conduction Nu = 1.
     */
    static double hotPlateUpNusselt(double rayleigh) {
        return rayleigh < 1e7 ? Math.max(0.54 * Math.pow(rayleigh, 0.25), 1) : 0.15 * Math.cbrt(rayleigh);
    }

    /** Free convection below a hot horizontal plate, length = area / perimeter: McAdams, eq. 9.32, 1e5 to 1e10. */
    static double hotPlateDownNusselt(double rayleigh) {
        return Math.max(0.27 * Math.pow(rayleigh, 0.25), 1);
    }

    /** Cross flow over a cylinder, length = diameter, Re Pr above 0.2: Churchill and Bernstein 1977, eq. 7.54. */
    static double crossFlowNusselt(double reynolds, double prandtl) {
        return 0.3 + 0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)
                / Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25)
                * Math.pow(1 + Math.pow(reynolds / 282_000, 5.0 / 8), 0.8);
    }

    /** Laminar flow along a plate, Re up to 5e5: eq. 7.30. */
    static double plateFlowNusselt(double reynolds, double prandtl) {
        return 0.664 * Math.sqrt(reynolds) * Math.cbrt(prandtl);
    }

    /**
     * Free and forced convection together, flowing across each other: Nu^3 = forced^3 + free^3, eq. 9.64 with n = 3.
     */
    static double together(double freeCoefficient, double forcedCoefficient) {
        return Math.cbrt(Math.pow(freeCoefficient, 3) + Math.pow(forcedCoefficient, 3));
    }

    /** Linearised radiation to the room, W/(m2 K): eq. 1.9, h = eps sigma (Ts + Tr)(Ts^2 + Tr^2) in kelvin. */
    static double radiation(double emissivity, double surfaceCelsius, double roomCelsius) {
        double s = surfaceCelsius + KELVIN_AT_ZERO_CELSIUS;
        double r = roomCelsius + KELVIN_AT_ZERO_CELSIUS;
        return emissivity * STEFAN_BOLTZMANN * (s + r) * (s * s + r * r);
    }

    /** Air and radiation at an upright cylinder, W/(m2 K); draught in m/s, 0 for still air. */
    static double side(double surfaceCelsius, double roomCelsius, double height, double diameter,
            double emissivity, double draught) {
        Air air = Air.film(surfaceCelsius, roomCelsius);
        double rayleigh = air.rayleigh(surfaceCelsius - roomCelsius, height);
        double free = (rayleigh <= 1e9 ? verticalLaminarNusselt(rayleigh, air.prandtl())
                : verticalNusselt(rayleigh, air.prandtl())) * air.conductivity() / height;
        double reynolds = draught * diameter / air.kinematicViscosity();
        double forced = draught <= 0 ? 0 : crossFlowNusselt(reynolds, air.prandtl()) * air.conductivity() / diameter;
        return together(free, forced) + radiation(emissivity, surfaceCelsius, roomCelsius);
    }

    /** Air and radiation at a round surface facing up, W/(m2 K); draught in m/s, 0 for still air. */
    static double top(double surfaceCelsius, double roomCelsius, double diameter, double emissivity,
            double draught) {
        Air air = Air.film(surfaceCelsius, roomCelsius);
        double length = diameter / 4;
        double rayleigh = air.rayleigh(surfaceCelsius - roomCelsius, length);
        double free = hotPlateUpNusselt(rayleigh) * air.conductivity() / length;
        double reynolds = draught * diameter / air.kinematicViscosity();
        double forced = draught <= 0 ? 0 : plateFlowNusselt(reynolds, air.prandtl()) * air.conductivity() / diameter;
        return together(free, forced) + radiation(emissivity, surfaceCelsius, roomCelsius);
    }
}
