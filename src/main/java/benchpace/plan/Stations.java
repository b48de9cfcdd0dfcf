package benchpace.plan;

import java.time.Duration;

/**
 * What serves a step whose seats cannot all be served at once: a melter's tap, two scales. A seat that waits its turn
 * is not slow.
 *
 * @param atOnce how many seats it serves at once, 1 to {@link SeatNumber#MOST}
 * @param what   what serves them, in words ("melter tap"); at most 60 characters
 * @param each   how long a seat keeps it; above 0 and at most 2 h, and not longer than the step
 */
public record Stations(int atOnce, String what, Duration each) {
    /** That a seat may keep one. */
    public static final Duration LONGEST = Duration.ofHours(2);

    public Stations {
        if (atOnce < 1 || atOnce > SeatNumber.MOST) {
            throw new IllegalArgumentException("stations serve 1 to " + SeatNumber.MOST + " seats at once, not "
                    + atOnce);
        }
        Texts.required("what serves the seats", what, 60);
        Texts.durationWithin("how long a seat keeps " + what, each, LONGEST);
    }

    /** How long so many seats take one after another, if each keeps a station as long as planned and none idles. */
    public Duration forAll(int seats) {
        return each.multipliedBy((seats + atOnce - 1) / atOnce);
    }
}
