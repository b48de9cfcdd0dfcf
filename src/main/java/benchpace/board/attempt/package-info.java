/**
 * What fails alone: every model of a class is tried by itself, and what cannot be worked out just now is said instead.
 * Start at {@link benchpace.board.attempt.Attempts}.
 */
package benchpace.board.attempt;
