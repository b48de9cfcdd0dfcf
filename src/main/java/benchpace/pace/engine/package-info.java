/**
 * Judges a class's record at a moment, and learns from past classes. Start at {@link benchpace.pace.engine.PaceEngine}.
 */
package benchpace.pace.engine;
