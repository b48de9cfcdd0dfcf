/**
 * What is believed of step times, taps and openings, and the distributions it rests on. The numbers, each with where it
 * comes from, are in {@link benchpace.pace.belief.PacePriors}.
 */
package benchpace.pace.belief;
