/**
 * Pace: who is falling behind, what it costs, and when everyone goes home. Pure: a class's record and a moment go in,
 * beliefs come out. No clock, no files, no threads; random draws come from a fixed seed.
 *
 * <p>Start reading at {@link benchpace.pace.PaceEngine}, which judges a {@link benchpace.pace.ClassTrack} at a moment;
 * the numbers it rests on, each with where it comes from, are in {@link benchpace.pace.PacePriors}.
 */
package benchpace.pace;
