/**
 * A class looked back on in words: how it came out, what held it, whether flags were right, what the wait had to do,
 * and how candles turned out against what was said of them. A kind of sentence a class. Start at
 * {@link benchpace.words.report.OutcomeWords}.
 */
package benchpace.words.report;
