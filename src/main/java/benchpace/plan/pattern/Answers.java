package benchpace.plan.pattern;

import benchpace.plan.Candle;
import benchpace.plan.SeatNumber;

/**
 * What somebody who wants a new plan is asked.
 *
 * @param seats   how many guests, 1 to {@link SeatNumber#MOST}
 * @param candle  what they make
 * @param minutes how long the class may take, {@value #SHORTEST} to {@value #LONGEST}
 * @param venue   where it is held
 * @param pouring who pours
 * @param atOnce  how many can pour at once: pouring places, or helpers with a jug; 1 to {@link SeatNumber#MOST}
 */
public record Answers(int seats, Candle candle, int minutes, Venue venue, Pouring pouring, int atOnce) {
    public static final int SHORTEST = 30;
    public static final int LONGEST = 480;

    /** Where the class is held: at a hired venue everything is packed into boxes, and its sockets are asked after. */
    public enum Venue { OWN_SHOP, HIRED_VENUE }

    /** Who pours. Children never do, use no scissors, and see no flame. */
    public enum Pouring { GUESTS, HELPERS, HELPERS_FOR_CHILDREN }

    /** @throws IllegalArgumentException naming the answer, its range and what was given */
    public Answers {
        within("the number of seats", seats, 1, SeatNumber.MOST);
        within("how long the class may take, in minutes,", minutes, SHORTEST, LONGEST);
        within("how many can pour at once", atOnce, 1, SeatNumber.MOST);
    }

    private static void within(String what, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(what + " must be " + least + " to " + most + ", not " + value);
        }
    }

    /** The same with so many pouring at once. */
    public Answers pouringAtOnce(int places) {
        return new Answers(seats, candle, minutes, venue, pouring, places);
    }
}
