package benchpace.cure.solver;

import benchpace.cure.CoolingCase;

/**
 * The wax's material law per volume: enthalpy, temperature, solid fraction and the Kirchhoff transform.
 *
 * <p>Symbols: {@code H} enthalpy, J/m3, zero at the solidus; {@code T} temperature, Celsius; {@code theta} the
 * integral of k dT from the solidus, W/m, so that the conducted flux is exactly minus its gradient although k changes
 * with the solid fraction (Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed. 1959, section 1.6).
 */
final class PhaseLaw {
    /** A melting point is treated as a range this wide, kelvin: far below what a clock or a grid can see. */
    private static final double NARROWEST_RANGE_KELVIN = 1e-6;

    final double solidus;
    final double liquidus;
    /** Enthalpy at the liquidus. */
    final double liquidEnthalpy;
    final double thetaLiquidus;
    final double kSolid;
    final double kLiquid;
    /** Volumetric heat capacities, J/(m3 K); the mushy one contains the latent heat. */
    final double cSolid;
    final double cMushy;
    final double cLiquid;
    /** Half of dk/dT in the mushy range. */
    final double halfKSlope;

    PhaseLaw(CoolingCase c, double largestConductivity) {
        double range = Math.max(c.liquidusC() - c.solidusC(), NARROWEST_RANGE_KELVIN);
        double rho = c.densityKgM3();
        solidus = c.solidusC();
        liquidus = solidus + range;
        kSolid = Math.min(c.conductivitySolidWMK(), largestConductivity);
        kLiquid = Math.min(c.conductivityLiquidWMK(), largestConductivity);
        cSolid = rho * c.specificHeatSolidJKgK();
        cLiquid = rho * c.specificHeatLiquidJKgK();
        cMushy = (cSolid + cLiquid) / 2 + rho * c.latentHeatJKg() / range;
        liquidEnthalpy = cMushy * range;
        halfKSlope = (kLiquid - kSolid) / (2 * range);
        thetaLiquidus = (kSolid + kLiquid) / 2 * range;
    }

    double enthalpy(double t) {
        if (t <= solidus) {
            return cSolid * (t - solidus);
        }
        return t < liquidus ? cMushy * (t - solidus) : liquidEnthalpy + cLiquid * (t - liquidus);
    }

    double temperature(double h) {
        if (h <= 0) {
            return solidus + h / cSolid;
        }
        return h < liquidEnthalpy ? solidus + h / cMushy : liquidus + (h - liquidEnthalpy) / cLiquid;
    }

    double solidFraction(double h) {
        return 1 - Math.min(Math.max(h, 0), liquidEnthalpy) / liquidEnthalpy;
    }

    double theta(double t) {
        if (t <= solidus) {
            return kSolid * (t - solidus);
        }
        double u = t - solidus;
        return t < liquidus ? u * (kSolid + halfKSlope * u) : thetaLiquidus + kLiquid * (t - liquidus);
    }

    /** Theta of whole arrays, written without branches so that the compiler can use vector instructions. */
    void theta(double[] h, int count, double[] into, int offset) {
        double hl = liquidEnthalpy;
        double solidSlope = kSolid / cSolid;
        double mushySlope = kSolid / cMushy;
        double mushyCurve = halfKSlope / (cMushy * cMushy);
        double liquidSlope = kLiquid / cLiquid;
        double thetaL = thetaLiquidus;
        for (int i = 0; i < count; i++) {
            double x = h[i];
            into[offset + i] = x <= 0 ? solidSlope * x
                    : x < hl ? x * (mushySlope + mushyCurve * x) : thetaL + liquidSlope * (x - hl);
        }
    }

    /**
     * Temperature of a surface without capacity: solves (theta - theta(T)) / distance = loss (T - room) for T.
     *
     * @param thetaInside Kirchhoff potential at the given distance inside the surface
     */
    double surface(double thetaInside, double distance, double loss, double room) {
        double lossTimesDistance = loss * distance;
        double target = thetaInside + lossTimesDistance * (room - solidus);
        if (target <= 0) {
            return solidus + target / (kSolid + lossTimesDistance);
        }
        double atLiquidus = thetaLiquidus + lossTimesDistance * (liquidus - solidus);
        if (target >= atLiquidus) {
            return liquidus + (target - atLiquidus) / (kLiquid + lossTimesDistance);
        }
        double linear = kSolid + lossTimesDistance;
        // the root of halfKSlope u^2 + linear u = target that is stable as halfKSlope -> 0
        double u = 2 * target / (linear + Math.sqrt(Math.max(linear * linear + 4 * halfKSlope * target, 0)));
        return solidus + Math.min(Math.max(u, 0), liquidus - solidus);
    }
}
