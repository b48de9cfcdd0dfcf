package benchpace.web.screen.instructor;

/**
 * Where a tile stands on the drawing of the table.
 *
 * @param column from 0, as class {@code col-0} of the style sheet
 * @param row    from 0
 */
public record SeatPlace(int column, int row, int seat) { }
