/**
 * The day before a class: what is prepared for, its sheet, and its evenings simulated beside everything else. Start at
 * {@link benchpace.board.prep.Occasion}.
 */
package benchpace.board.prep;
