package benchpace.board;

/**
 * What the board knows about how candles cool in this room, and the drawing of one that is setting.
 *
 * @param fitWords what the room has taught, in words; empty if nothing
 */
public record RoomView(String fitWords) {
    /** Nothing is computed: the cure is the plan's own figure. */
    public static final RoomView NONE = new RoomView("");
}
