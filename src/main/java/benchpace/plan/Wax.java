package benchpace.plan;

/**
 * A wax as it sets: its thermal numbers. The melting range is the range in which it crystallises on cooling, which lies
 * below the melting point printed on the bag.
 *
 * @param id short stable name used in plans
 * @param name as people call it
 * @param densityKgM3 one density for both phases
 * @param specificHeatSolidJKgK J/(kg K)
 * @param specificHeatLiquidJKgK J/(kg K)
 * @param latentHeatJKg J/kg
 * @param solidusCelsius all solid at or below, on cooling
 * @param liquidusCelsius all liquid at or above, on cooling
 * @param conductivitySolidWMK W/(m K)
 * @param conductivityLiquidWMK effective value for the melt, stirring by natural convection included, W/(m K)
 * @param calibrated whether timed candles have confirmed these numbers in practice
 */
public record Wax(String id, String name, double densityKgM3, double specificHeatSolidJKgK,
        double specificHeatLiquidJKgK, double latentHeatJKg, double solidusCelsius, double liquidusCelsius,
        double conductivitySolidWMK, double conductivityLiquidWMK, boolean calibrated) {

    /** @throws IllegalArgumentException when a number lies outside anything a candle wax has */
    public Wax {
        if (id.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a wax needs an id and a name");
        }
        within("density", densityKgM3, 600, 1200);
        within("specific heat, solid", specificHeatSolidJKgK, 1000, 5000);
        within("specific heat, liquid", specificHeatLiquidJKgK, 1000, 5000);
        within("latent heat", latentHeatJKg, 20_000, 400_000);
        within("solidus", solidusCelsius, 20, 120);
        within("liquidus", liquidusCelsius, solidusCelsius, 120);
        within("conductivity, solid", conductivitySolidWMK, 0.05, 2);
        within("conductivity, liquid", conductivityLiquidWMK, 0.05, 5);
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " outside " + least + ".." + most + ": " + value);
        }
    }

    /** The same wax with its melting range moved, as a fragrance may do; kelvin, default practice is none. */
    public Wax withMeltingRangeMoved(double kelvin) {
        return new Wax(id, name, densityKgM3, specificHeatSolidJKgK, specificHeatLiquidJKgK, latentHeatJKg,
                solidusCelsius + kelvin, liquidusCelsius + kelvin, conductivitySolidWMK, conductivityLiquidWMK,
                calibrated);
    }

    /** The same wax marked as confirmed, or not, by timed candles. */
    public Wax withCalibrated(boolean confirmed) {
        return new Wax(id, name, densityKgM3, specificHeatSolidJKgK, specificHeatLiquidJKgK, latentHeatJKg,
                solidusCelsius, liquidusCelsius, conductivitySolidWMK, conductivityLiquidWMK, confirmed);
    }
}
