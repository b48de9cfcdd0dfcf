package benchpace.board.cooling;

import benchpace.cure.CoolingCase;
import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.Evidence;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.Candle;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a class has poured and what was seen of it: all that its forecast rests on beside the room's past. Equal inputs,
 * equal forecast.
 *
 * @param poured       every candle of a seat's own, in seat order
 * @param evidence     what was seen, as far as it can be believed of those candles
 * @param observations everything that was seen or measured
 */
record ClassCandles(List<PouredCandle> poured, List<Evidence> evidence, List<Observation> observations) {
    private static final double LONGEST_MINUTES = 24 * 60;

    ClassCandles {
        poured = List.copyOf(poured);
        evidence = List.copyOf(evidence);
        observations = List.copyOf(observations);
    }

    static ClassCandles of(LiveClass live) {
        return of(live, Optional.empty());
    }

    /** As it would be had one thing not been seen. */
    static ClassCandles without(LiveClass live, Observation unseen) {
        return of(live, Optional.of(unseen));
    }

    private static ClassCandles of(LiveClass live, Optional<Observation> unseen) {
        List<Observation> seen = new ArrayList<>(observed(live));
        unseen.ifPresent(seen::remove);
        Progress progress = live.progress();
        Map<TableCase, CoolingCase> alike = new HashMap<>();
        List<PouredCandle> poured = new ArrayList<>();
        for (Seat seat : live.seats()) {
            Optional<Instant> at = progress.pouredAt(seat);
            if (at.isPresent() && seat.sharesWith().isEmpty()) {
                poured.add(poured(live, seat, at.get(), seen, alike));
            }
        }
        return new ClassCandles(poured, evidence(poured, seen), seen);
    }

    /** What was seen last. */
    Optional<Observation> latest() {
        return observations.stream().max(Comparator.comparing(Observation::at));
    }

    private static List<Observation> observed(LiveClass live) {
        List<Observation> seen = new ArrayList<>();
        live.roomReadings().forEach(r -> seen.add(
                new Observation(Observation.Kind.ROOM, Optional.empty(), r.at(), r.celsius())));
        live.pourReadings().forEach(r -> seen.add(
                new Observation(Observation.Kind.POUR, Optional.empty(), r.at(), r.celsius())));
        for (Seat seat : live.seats()) {
            Optional<benchpace.plan.SeatNumber> number = Optional.of(seat.number());
            seat.readings().forEach(r -> seen.add(
                    new Observation(Observation.Kind.SURFACE, number, r.at(), r.celsius())));
            seat.skinSeenAt().ifPresent(at -> seen.add(new Observation(Observation.Kind.SKIN, number, at, 0)));
            seat.judgedSetAt().ifPresent(at -> seen.add(new Observation(Observation.Kind.JUDGED_SET, number, at, 0)));
        }
        return seen;
    }

    private static PouredCandle poured(LiveClass live, Seat seat, Instant at, List<Observation> seen,
                                       Map<TableCase, CoolingCase> alike) {
        Candle candle = candle(live, seat);
        String id = seat.number() + "@" + at;
        TableCase table = tableCase(candle, roomCelsius(seen).orElse(candle.roomCelsius()),
                pourCelsius(seen, at).orElse(candle.pourCelsius()));
        CuringCandle curing = new CuringCandle(id, alike.computeIfAbsent(table, TableCase::coolingCase),
                candle.wax().calibrated());
        return new PouredCandle(seat.number(), candle, curing, at, seat.hasLeft(),
                seat.judgedSetAt());
    }

    /** What the seat makes: its choice, or the plan's first. */
    static Candle candle(LiveClass live, Seat seat) {
        return seat.candle().flatMap(live.plan()::candle).orElseGet(() -> live.plan().candles().get(0));
    }

    /**
     * The candle at measured temperatures. One measured pour serves all waxes of a class, so a wax that melts higher
     * counts as poured just molten, and a room above a wax's solidus as being at it.
     */
    static TableCase tableCase(Candle c, double roomCelsius, double pourCelsius) {
        double room = Math.min(roomCelsius, c.wax().solidusCelsius());
        double pour = Math.max(pourCelsius, c.wax().liquidusCelsius());
        return TableCase.of(c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(), room, pour, c.tableTop(), 1);
    }

    /** The latest reading of the room. */
    static Optional<Double> roomCelsius(List<Observation> seen) {
        return seen.stream().filter(o -> o.kind() == Observation.Kind.ROOM)
                .max(Comparator.comparing(Observation::at)).map(Observation::celsius);
    }

    /** The last reading of the pitcher up to a pour, else the first one after it. */
    static Optional<Double> pourCelsius(List<Observation> seen, Instant pouredAt) {
        List<Observation> pours = seen.stream().filter(o -> o.kind() == Observation.Kind.POUR)
                .sorted(Comparator.comparing(Observation::at)).toList();
        Optional<Observation> before = pours.stream().filter(o -> !o.at().isAfter(pouredAt))
                .reduce((earlier, later) -> later);
        return before.or(() -> pours.stream().findFirst()).map(Observation::celsius);
    }

    private static List<Evidence> evidence(List<PouredCandle> poured, List<Observation> seen) {
        TreeMap<Integer, PouredCandle> bySeat = new TreeMap<>();
        poured.forEach(p -> bySeat.put(p.seat().value(), p));
        List<Evidence> evidence = new ArrayList<>();
        for (Observation o : seen) {
            PouredCandle candle = o.seat().map(s -> bySeat.get(s.value())).orElse(null);
            if (candle != null && candle.minutesAt(o.at()) <= LONGEST_MINUTES) {
                evidence(candle, o).ifPresent(evidence::add);
            }
        }
        return evidence;
    }

    /** Empty for a reading that a later correction of room or pour has made unbelievable. */
    private static Optional<Evidence> evidence(PouredCandle candle, Observation o) {
        double minutes = candle.minutesAt(o.at());
        return switch (o.kind()) {
            case SURFACE -> Evidence.SurfaceReading.refusal(candle.curing(), o.celsius()).isPresent()
                    ? Optional.empty()
                    : Optional.of(new Evidence.SurfaceReading(candle.curing(), minutes, o.celsius()));
            case SKIN -> Optional.of(new Evidence.SkinFormed(candle.curing(), minutes));
            case JUDGED_SET -> Optional.of(new Evidence.JudgedSet(candle.curing(), minutes));
            case ROOM, POUR -> Optional.empty();
        };
    }
}
