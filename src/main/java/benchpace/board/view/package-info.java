/**
 * What screens are given: one view of a class at an instant, the look back, and how they are derived from the class,
 * the pace, the wait and the cure. Keeps nothing. Start at {@link benchpace.board.view.ViewMaker}.
 */
package benchpace.board.view;
