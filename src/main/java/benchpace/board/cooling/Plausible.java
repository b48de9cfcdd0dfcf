package benchpace.board.cooling;

import benchpace.cure.room.Evidence;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Refusal;
import benchpace.plan.Candle;
import java.util.List;
import java.util.Optional;

/** Whether a temperature can be true of the candles of a class. Pure. */
public final class Plausible {
    private Plausible() { }

    /** Why it cannot; empty if it can, or if the plan names no candle to compare with. */
    public static Optional<Refusal> refusal(LiveClass live, ClassEvent wish) {
        List<Candle> candles = live.plan().candles();
        if (candles.isEmpty()) {
            return Optional.empty();
        }
        if (wish instanceof ClassEvent.RoomRead read) {
            double most = candles.stream().mapToDouble(c -> c.wax().solidusCelsius()).min().orElseThrow();
            return within(read.celsius(), Candle.COLDEST_ROOM, most);
        }
        if (wish instanceof ClassEvent.PourRead read) {
            double least = candles.stream().mapToDouble(c -> c.wax().liquidusCelsius()).min().orElseThrow();
            return within(read.celsius(), least, Candle.HOTTEST_POUR);
        }
        return wish instanceof ClassEvent.TemperatureRead read ? surface(live, read) : Optional.empty();
    }

    private static Optional<Refusal> surface(LiveClass live, ClassEvent.TemperatureRead read) {
        return ClassCandles.of(live).poured().stream()
                .filter(p -> p.seat().equals(read.seat()))
                .findFirst()
                .flatMap(p -> Evidence.SurfaceReading.refusal(p.curing(), read.celsius()))
                .map(r -> new Refusal.Absurd("celsius", r.celsius(), r.lowestCelsius(), r.highestCelsius()));
    }

    private static Optional<Refusal> within(double value, double least, double most) {
        return value >= least && value <= most ? Optional.empty()
                : Optional.of(new Refusal.Absurd("celsius", value, least, most));
    }
}
