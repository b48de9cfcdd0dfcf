package benchpace.pace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How long each seat has waited for its turn at each step up to the pour; nothing in a class whose steps serve all
 * seats at once. The steps are taken in order, as when a seat comes to one depends on its turn at those before.
 */
final class StationWaits {
    private final double[] none;
    private final Map<Integer, double[]> waits = new HashMap<>();
    private final Map<Integer, StationTurns> turns = new HashMap<>();

    private StationWaits(int steps) {
        this.none = new double[steps];
    }

    static StationWaits of(ClassTrack track, double now) {
        StationWaits waits = new StationWaits(track.steps().size());
        for (int k = 0; k <= track.pourStep(); k++) {
            PaceStep step = track.steps().get(k);
            if (step.kind().isWorked() && step.stations().isPresent()) {
                waits.add(track, k, step.stations().get(), now);
            }
        }
        return waits;
    }

    /** Minutes waited at each step by the seat of that number; {@link SeatTrack#NOT_YET} where it still waits. */
    double[] of(int seat) {
        return waits.getOrDefault(seat, none);
    }

    /** The turns at each step that has stations, by its index. */
    Map<Integer, StationTurns> turns() {
        return turns;
    }

    private void add(ClassTrack track, int k, PaceStations stations, double now) {
        List<SeatProgress> seats = SeatProgress.all(track, now, this);
        List<StationTurns.Guest> guests = new ArrayList<>();
        List<SeatTrack> coming = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            SeatTrack seat = track.seats().get(i);
            if (isFirstOfItsCandle(track, i)) {
                guest(seat, seats.get(i), k, now).ifPresent(guest -> {
                    guests.add(guest);
                    coming.add(seat);
                });
            }
        }
        StationTurns served = StationTurns.of(stations, track.steps().get(k).planMinutes(), guests, now);
        turns.put(k, served);
        double[] began = served.turns();
        for (int j = 0; j < guests.size(); j++) {
            StationTurns.Guest guest = guests.get(j);
            double waited = began[j] == SeatTrack.NOT_YET ? SeatTrack.NOT_YET : began[j] - guest.cameMinutes();
            for (SeatTrack seat : track.seats()) {
                if (seat.seat() == guest.seat() || coming.get(j).sharesCandleWith(seat)) {
                    waits.computeIfAbsent(seat.seat(), s -> new double[none.length])[k] = Math.max(0, waited);
                }
            }
        }
    }

    /** Seats that share a candle take one turn together: that of the first of them. */
    private static boolean isFirstOfItsCandle(ClassTrack track, int i) {
        SeatTrack seat = track.seats().get(i);
        return track.seats().subList(0, i).stream().noneMatch(seat::sharesCandleWith);
    }

    private static Optional<StationTurns.Guest> guest(SeatTrack seat, SeatProgress progress, int k, double now) {
        for (SeatProgress.Done done : progress.done()) {
            if (done.step() == k) {
                return Optional.of(new StationTurns.Guest(seat.seat(), done.startMinutes(),
                        done.tapMinutes(), seat.leftMinutes(), seat.pauses()));
            }
        }
        boolean come = progress.step() == k && progress.startMinutes() <= now && seat.arrivedMinutes() <= now;
        return come ? Optional.of(new StationTurns.Guest(seat.seat(), progress.startMinutes(),
                SeatTrack.NOT_YET, seat.leftMinutes(), seat.pauses())) : Optional.empty();
    }
}
