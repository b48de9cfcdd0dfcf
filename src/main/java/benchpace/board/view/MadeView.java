package benchpace.board.view;

/**
 * A view of a class.
 *
 * @param number of all its views, counted as they were made: their order, also where a clock was set back in between
 */
public record MadeView(long number, ClassView view) { }
