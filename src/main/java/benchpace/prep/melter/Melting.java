package benchpace.prep.melter;

import benchpace.plan.Wax;

/**
 * Solid wax of the room made ready to pour. The time from the wall's power is a lower bound: solid wax conducts badly,
 * so that the shop's own stop-watch must correct the efficiency.
 *
 * @param roomCelsius T0, at or below the solidus
 * @param pourCelsius T1, at or above the liquidus
 */
public record Melting(WaxHeat wax, double roomCelsius, double pourCelsius) {
    /** @throws IllegalArgumentException if it is not solid to begin with, or not molten in the end */
    public Melting {
        if (!(roomCelsius <= wax.solidus() && pourCelsius >= wax.liquidus())) {
            throw new IllegalArgumentException("wax that melts from " + wax.solidus() + " to " + wax.liquidus()
                    + " °C is not melted from " + roomCelsius + " to " + pourCelsius + " °C");
        }
    }

    public Melting(Wax wax, double roomCelsius, double pourCelsius) {
        this(WaxHeat.of(wax), roomCelsius, pourCelsius);
    }

    /** From the room to the pour, J/kg. */
    public double joulesPerKilogram() {
        return wax.enthalpy(pourCelsius) - wax.enthalpy(roomCelsius);
    }

    public double kilojoules(double grams) {
        return grams / 1000 * joulesPerKilogram() / 1000;
    }

    /** @param efficiency share of the heat that reaches the wax, above 0 and at most 1 */
    public double minutes(double grams, double watts, double efficiency) {
        return minutesOf(kilojoules(grams), watts, efficiency);
    }

    /** How long a heater takes to give so much heat to the wax. */
    static double minutesOf(double kilojoules, double watts, double efficiency) {
        return kilojoules * 1000 / (efficiency * watts) / 60;
    }

    /**
     * What the shop's stop-watch says of a melter: the efficiency with which these grams took these minutes. Above 1
     * one of the figures is wrong, as no melter gives more heat than it takes.
     *
     * @param minutes above 0
     */
    public double efficiency(double grams, double watts, double minutes) {
        return kilojoules(grams) * 1000 / (watts * minutes * 60);
    }

    /**
     * Cold wax of the room put into wax at the pour temperature, by their mean enthalpy; their mean temperature would
     * be wrong, because it leaves out what melting takes.
     */
    public TopUp topUp(double hotGrams, double coldGrams) {
        double mean = (hotGrams * wax.enthalpy(pourCelsius) + coldGrams * wax.enthalpy(roomCelsius))
                / (hotGrams + coldGrams);
        return new TopUp(hotGrams, coldGrams, wax.celsius(mean), wax.liquidFraction(mean), kilojoules(coldGrams));
    }
}
