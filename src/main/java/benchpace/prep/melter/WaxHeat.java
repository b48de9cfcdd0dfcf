package benchpace.prep.melter;

import benchpace.plan.Wax;

/**
 * Enthalpy of a wax, J/kg, above what it has as a solid at 0 °C. In the melting range the latent heat is released
 * evenly, on top of the mean specific heat:
 *
 * <pre>
 *   h(T1) - h(T0) = cs (Ts - T0) + L + (cs + cl)/2 (Tl - Ts) + cl (T1 - Tl)     T0 &lt;= Ts, T1 &gt;= Tl
 * </pre>
 *
 * cs, cl specific heats of solid and melt, L latent heat, Ts solidus, Tl liquidus: the law of the cooling candle
 * ({@code benchpace.cure.solver}), per kilogram.
 */
public record WaxHeat(double cs, double cl, double latent, double solidus, double liquidus) {

    public static WaxHeat of(Wax wax) {
        return new WaxHeat(wax.specificHeatSolidJKgK(), wax.specificHeatLiquidJKgK(), wax.latentHeatJKg(),
                wax.solidusCelsius(), wax.liquidusCelsius());
    }

    private double atSolidus() {
        return cs * solidus;
    }

    /** Between solidus and liquidus. */
    private double melting() {
        return latent + (cs + cl) / 2 * (liquidus - solidus);
    }

    public double enthalpy(double celsius) {
        if (celsius <= solidus) {
            return cs * celsius;
        }
        if (celsius >= liquidus) {
            return atSolidus() + melting() + cl * (celsius - liquidus);
        }
        return atSolidus() + melting() * (celsius - solidus) / (liquidus - solidus);
    }

    /** What {@link #enthalpy} has that value; at a melting point that is no range, the point itself. */
    public double celsius(double enthalpy) {
        double h = enthalpy - atSolidus();
        if (h <= 0) {
            return solidus + h / cs;
        }
        return h < melting() ? solidus + (liquidus - solidus) * h / melting() : liquidus + (h - melting()) / cl;
    }

    /** The share that is molten, 0 to 1. */
    public double liquidFraction(double enthalpy) {
        return Math.min(1, Math.max(0, (enthalpy - atSolidus()) / melting()));
    }
}
