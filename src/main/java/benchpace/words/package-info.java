/**
 * Facts into words: times and lengths, seats, candles, and what happened. Views carry facts, screens arrange words;
 * between them each kind of sentence has one formatter here, so that no fact is said two ways. Nothing is computed
 * here and nothing is looked up. Start at {@link benchpace.words.Times}.
 */
package benchpace.words;
