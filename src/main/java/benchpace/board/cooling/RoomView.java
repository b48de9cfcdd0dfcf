package benchpace.board.cooling;

import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.Candle;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the board knows about how candles cool in this room, and what those that are setting look like inside.
 *
 * @param refit      what the last reading or test changed; empty if there was none, and once the class is closed
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

    /** What was chosen and read, of a class whose plan names candles. @param refit what that changed */
    static RoomView of(LiveClass live, Optional<Refit> refit) {
        List<Choice> choices = new ArrayList<>();
        live.plan().candles().forEach(c -> choices.add(new Choice(c.id(), c.name())));
        Map<Integer, String> chosen = new TreeMap<>();
        for (Seat seat : live.seats()) {
            seat.candle().ifPresent(c -> chosen.put(seat.number().value(), c));
        }
        Candle first = live.plan().candles().get(0);
        return new RoomView(refit.filter(r -> live.closedAt().isEmpty()), choices, chosen,
                Optional.of(warmth(live.roomReadings(), first.roomCelsius())),
                Optional.of(warmth(live.pourReadings(), first.pourCelsius())), Map.of(), Optional.empty());
    }

    /** The latest, else the plan's. */
    private static Warmth warmth(List<LiveClass.Temperature> seen, double planned) {
        return seen.stream().max(Comparator.comparing(LiveClass.Temperature::at))
                .map(r -> new Warmth(r.celsius(), Optional.of(r.at())))
                .orElseGet(() -> new Warmth(planned, Optional.empty()));
    }

    /** What of it still holds after more events. @param clocks of the candles that are still as they were drawn */
    RoomView after(LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        if (candles.isEmpty() || live.plan().candles().isEmpty()) {
            return NONE;
        }
        Map<Integer, CutAway> drawn = new TreeMap<>(cutOpen);
        drawn.keySet().removeIf(seat -> Optional.ofNullable(clocks.get(new SeatNumber(seat)))
                .filter(c -> !c.settled()).isEmpty());
        return of(live, refit).with(drawn, nextChange);
    }

    RoomView with(Map<Integer, CutAway> drawn, Optional<Instant> next) {
        return new RoomView(refit, candles, chosen, room, pour, drawn, next);
    }
}
