package benchpace.prep.melter;

/**
 * What cold wax does to what is molten.
 *
 * @param mixCelsius     where both meet, before the heater has done anything
 * @param liquidFraction the share that is molten then, 0 to 1
 * @param kilojoules     until all of it is back at the pour temperature
 */
public record TopUp(double hotGrams, double coldGrams, double mixCelsius, double liquidFraction, double kilojoules) {

    /** Until all of it is back at the pour temperature. @param efficiency above 0 and at most 1 */
    public double minutes(double watts, double efficiency) {
        return Melting.minutesOf(kilojoules, watts, efficiency);
    }
}
