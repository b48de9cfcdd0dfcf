/**
 * Floor 2: what the sheet reminds of: makers' documents, labels by region, burns and fire. What is asked and how sure
 * its origin is; no legal verdict is given anywhere, and local codes, makers' documents and licensed practice go first.
 * The words with their sources are {@code benchpace.words.prep}'s.
 */
package benchpace.prep.card;
