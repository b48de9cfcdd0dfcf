package benchpace.board.cooling;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the board knows about how candles cool in this room, and what those that are setting look like inside.
 *
 * @param refit      what the last reading or test changed; empty if there was none
 * @param candles    what a seat may make; empty if the plan names none and nothing is computed
 * @param chosen     the candle of each seat that chose one, by its number
 * @param room       the room's temperature in use
 * @param pour       the pour's temperature in use for a candle poured now
 * @param cutOpen    the candles that no hand has decided on, by seat, where they are computed
 * @param nextChange when anything of this next changes by itself
 */
public record RoomView(Optional<Refit> refit, List<Choice> candles, Map<Integer, String> chosen, Optional<Warmth> room,
                       Optional<Warmth> pour, Map<Integer, CutAway> cutOpen, Optional<Instant> nextChange) {
    /** Nothing is computed: the cure is the plan's own figure. */
    public static final RoomView NONE = new RoomView(Optional.empty(), List.of(), Map.of(), Optional.empty(),
            Optional.empty(), Map.of(), Optional.empty());

    /** One candle of the plan. */
    public record Choice(String id, String name) { }

    /** A temperature. @param readAt when it was measured; empty if it is the plan's */
    public record Warmth(double celsius, Optional<Instant> readAt) { }

    public RoomView {
        candles = List.copyOf(candles);
        chosen = Map.copyOf(chosen);
        cutOpen = Map.copyOf(cutOpen);
    }

    RoomView with(Map<Integer, CutAway> drawn, Optional<Instant> next) {
        return new RoomView(refit, candles, chosen, room, pour, drawn, next);
    }
}
