package benchpace.cure.room;

/**
 * How far a room's fit moved.
 *
 * @param lossTimes new median of the loss multiplier over the old: 1.2 means the room is now taken to cool 20 per cent
 *     faster than before
 * @param readyBy what was added to the ready fraction
 * @param uncertaintyTimes new standard deviation of ln(loss) over the old; below 1 when more is known
 * @param observations how many observations came in between
 */
public record FitChange(double lossTimes, double readyBy, double uncertaintyTimes, int observations) { }
