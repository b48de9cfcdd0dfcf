package benchpace.pace;

import benchpace.plan.SeatNumber;

/**
 * What serves a step whose seats cannot all be served at once, as pace sees it.
 *
 * @param atOnce how many seats it serves at once, 1 to {@link SeatNumber#MOST}
 * @param eachMinutes how long a seat keeps it, above 0 and not longer than the step takes
 */
public record PaceStations(int atOnce, double eachMinutes) {
    public PaceStations {
        if (atOnce < 1 || atOnce > SeatNumber.MOST) {
            throw new IllegalArgumentException("stations for " + atOnce + " seats at once");
        }
        if (!(eachMinutes > 0 && eachMinutes < 24 * 60)) {
            throw new IllegalArgumentException("a station kept for " + eachMinutes + " minutes");
        }
    }
}
