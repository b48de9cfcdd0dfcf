package benchpace.prep.melter;

import java.util.OptionalDouble;

/**
 * A fill after the first: cold wax put onto what stays in the melter once the fill before it is poured.
 *
 * @param number      2 for the second fill
 * @param afterSeats  about how many seats have poured by then
 * @param minutes     during which nobody can pour, until all is back at the pour temperature
 */
public record Refill(int number, int afterSeats, TopUp topUp, OptionalDouble minutes) { }
