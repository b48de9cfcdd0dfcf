package benchpace.live;

/**
 * How far the class as a whole has come by what was told, the clock left aside. It follows the class and no single
 * seat: events only ever move it on, so that it goes back with an undo or a correction alone, which change the list of
 * events.
 * <ol>
 * <li>It is the furthest led step that is open,</li>
 * <li>or of the free steps after that, up to the next led one, the furthest that more than half of the seats making a
 * candle have reached: they are done with every hands-on step before it, and their candle is judged set if the cure
 * lies before it. Free talks are passed over.</li>
 * <li>A led talk is left for the free step after it as soon as one seat is done with something after the talk (its time
 * box, which ends it too, is the caller's to watch).</li>
 * <li>After each event it is the further of where it was and of where these rules see it now: who is late, leaves or
 * pairs up moves it never back.</li>
 * </ol>
 *
 * @param upToCure the same with the led steps after the cure left out, as if they were not open
 * @param whole    all steps counted
 * @param firm     whether a candle was judged set or is past the cure
 */
public record ClassReach(OpenStep upToCure, OpenStep whole, boolean firm) { }
