package benchpace.cure;

import java.util.Optional;

/**
 * One candle cooling on a table: the cylinder of wax and everything that decides how fast it sets. All quantities are
 * explicit, so that any solver of the same model can be compared with this one.
 *
 * <p>The melt's conductivity is an effective value that also carries the stirring by natural convection. Loss
 * coefficients are those beyond the wax surface (vessel wall, air and radiation); capacities are those of the vessel's
 * wall and base per area of wax surface. Losses and capacities may be zero (insulated, or a wall without weight).
 *
 * @param innerDiameterMm inner diameter of the vessel, millimetres, above 0
 * @param waxMassG wax and fragrance together, grams, above 0
 * @param densityKgM3 one density for both phases, kg/m3
 * @param specificHeatSolidJKgK below the solidus, J/(kg K)
 * @param specificHeatLiquidJKgK above the liquidus, J/(kg K)
 * @param latentHeatJKg released linearly between liquidus and solidus, J/kg, 0 allowed
 * @param solidusC all solid at or below, Celsius
 * @param liquidusC all liquid at or above, Celsius
 * @param conductivitySolidWMK W/(m K)
 * @param conductivityLiquidWMK effective, W/(m K)
 * @param roomC Celsius, at most the solidus
 * @param pourC Celsius, at least the liquidus
 * @param sideLossWM2K W/(m2 K)
 * @param baseLossWM2K W/(m2 K)
 * @param topLossWM2K W/(m2 K)
 * @param sideCapacityJM2K J/(m2 K)
 * @param baseCapacityJM2K J/(m2 K)
 */
public record CoolingCase(
        double innerDiameterMm, double waxMassG, double densityKgM3,
        double specificHeatSolidJKgK, double specificHeatLiquidJKgK, double latentHeatJKg,
        double solidusC, double liquidusC, double conductivitySolidWMK, double conductivityLiquidWMK,
        double roomC, double pourC, double sideLossWM2K, double baseLossWM2K, double topLossWM2K,
        double sideCapacityJM2K, double baseCapacityJM2K) {

    private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;
    private static final double HOTTEST_CELSIUS = 1000;

    /** @throws IllegalArgumentException when {@link #fault} would name a fault */
    public CoolingCase {
        fault(innerDiameterMm, waxMassG, densityKgM3, specificHeatSolidJKgK, specificHeatLiquidJKgK, latentHeatJKg,
                solidusC, liquidusC, conductivitySolidWMK, conductivityLiquidWMK, roomC, pourC,
                sideLossWM2K, baseLossWM2K, topLossWM2K, sideCapacityJM2K, baseCapacityJM2K)
                .ifPresent(fault -> {
                    throw new IllegalArgumentException(fault.field() + " " + fault.reason());
                });
    }

    /**
     * The first fault that keeps these numbers, in the record's order, from being a case; empty when they are one.
     *
     * @param numbers the seventeen components in order
     */
    public static Optional<CaseFault> fault(double... numbers) {
        String[] names = fieldNames();
        if (numbers.length != names.length) {
            throw new IllegalArgumentException("a case has " + names.length + " numbers, not " + numbers.length);
        }
        for (int i = 0; i < names.length; i++) {
            Optional<CaseFault> alone = faultAlone(names[i], numbers[i]);
            if (alone.isPresent()) {
                return alone;
            }
        }
        double solidus = numbers[6];
        double liquidus = numbers[7];
        double room = numbers[10];
        double pour = numbers[11];
        if (solidus > liquidus) {
            return Optional.of(new CaseFault("solidusC", "(" + solidus + ") is above liquidusC (" + liquidus + ")"));
        }
        if (room > solidus) {
            return Optional.of(new CaseFault("roomC",
                    "(" + room + ") is above solidusC (" + solidus + "), so the wax would never set"));
        }
        if (pour < liquidus) {
            return Optional.of(new CaseFault("pourC",
                    "(" + pour + ") is below liquidusC (" + liquidus + "), so the wax was not wholly melted"));
        }
        return Optional.empty();
    }

    private static Optional<CaseFault> faultAlone(String name, double value) {
        if (!Double.isFinite(value)) {
            return Optional.of(new CaseFault(name, "is not a finite number"));
        }
        if (name.equals("solidusC") || name.equals("liquidusC") || name.equals("roomC") || name.equals("pourC")) {
            return value < ABSOLUTE_ZERO_CELSIUS || value > HOTTEST_CELSIUS
                    ? Optional.of(new CaseFault(name, "(" + value + ") is no temperature that wax can have"))
                    : Optional.empty();
        }
        boolean zeroAllowed = name.contains("Loss") || name.contains("Capacity") || name.startsWith("latent");
        if (value < 0 || value == 0 && !zeroAllowed) {
            return Optional.of(new CaseFault(name,
                    "(" + value + ") must be " + (zeroAllowed ? "zero or more" : "more than zero")));
        }
        if (value > 1e9 || value > 0 && value < 1e-9) {
            return Optional.of(new CaseFault(name, "(" + value + ") is far outside anything a candle can have"));
        }
        return Optional.empty();
    }

    /** The case file's names of the seventeen numbers, in the record's order. */
    public static String[] fieldNames() {
        return new String[] {"innerDiameterMm", "waxMassG", "densityKgM3", "specificHeatSolidJKgK",
            "specificHeatLiquidJKgK", "latentHeatJKg", "solidusC", "liquidusC", "conductivitySolidWMK",
            "conductivityLiquidWMK", "roomC", "pourC", "sideLossWM2K", "baseLossWM2K", "topLossWM2K",
            "sideCapacityJM2K", "baseCapacityJM2K"};
    }

    /** A case from its seventeen numbers in the record's order. */
    public static CoolingCase of(double... n) {
        if (n.length != 17) {
            throw new IllegalArgumentException("a case has 17 numbers, not " + n.length);
        }
        return new CoolingCase(n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7], n[8], n[9], n[10], n[11], n[12],
                n[13], n[14], n[15], n[16]);
    }

    /** The seventeen numbers in the record's order. */
    public double[] numbers() {
        return new double[] {innerDiameterMm, waxMassG, densityKgM3, specificHeatSolidJKgK, specificHeatLiquidJKgK,
            latentHeatJKg, solidusC, liquidusC, conductivitySolidWMK, conductivityLiquidWMK, roomC, pourC,
            sideLossWM2K, baseLossWM2K, topLossWM2K, sideCapacityJM2K, baseCapacityJM2K};
    }

    /** Inner radius R of the vessel, metres. */
    public double radiusMetres() {
        return innerDiameterMm / 2000;
    }

    /** Height of the wax, H = m / (rho pi R^2), metres. */
    public double heightMetres() {
        double radius = radiusMetres();
        return waxMassG / 1000 / (densityKgM3 * Math.PI * radius * radius);
    }

    /** Heat that the wax gives up between the pour and the solidus, J/kg. */
    public double heatToSetJKg() {
        return latentHeatJKg + (specificHeatSolidJKgK + specificHeatLiquidJKgK) / 2 * (liquidusC - solidusC)
                + specificHeatLiquidJKgK * (pourC - liquidusC);
    }

    /** The same candle with its three loss coefficients multiplied. */
    public CoolingCase withLossTimes(double multiplier) {
        double[] n = numbers();
        for (int i = 12; i <= 14; i++) {
            n[i] *= multiplier;
        }
        return of(n);
    }

    /** The temperature half way between solidus and liquidus, at which the top surface counts as a skin, Celsius. */
    public double skinCelsius() {
        return (solidusC + liquidusC) / 2;
    }
}
