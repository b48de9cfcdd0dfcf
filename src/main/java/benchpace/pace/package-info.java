/**
 * Pace: a class's record as it is judged, and what is found. Its rooms, from the top: {@code engine} says who falls
 * behind and what it costs, {@code forecast} when everyone goes home, {@code belief} what is believed of steps, taps
 * and openings. Pure: a record and a moment go in, beliefs come out. No clock, no files, no threads; random draws come
 * from a fixed seed. Start at {@link benchpace.pace.ClassTrack} and {@link benchpace.pace.engine.PaceEngine}.
 */
package benchpace.pace;
