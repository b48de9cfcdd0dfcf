package benchpace.board;

import benchpace.cure.CuringCandle;
import benchpace.cure.CureOutlook;
import benchpace.cure.MinuteRange;
import benchpace.cure.RoomFit;
import benchpace.cure.RoomPosterior;
import benchpace.cure.TrajectoryCache;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.Candle;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The cure as computed for each candle and corrected by what this room shows. A plan that names no candle keeps its own
 * figure. A forecast depends on what was poured and seen and not on the hour, so it is computed once for each new fact
 * and kept; nothing here runs while a class's lock is held. Safe for use by many threads.
 */
public final class RoomCureClock implements CureClock {
    private static final int MOST_FORECASTS = 64;

    private final Priors priors;
    private final PlanCureClock byFigure = new PlanCureClock();
    private final TrajectoryCache trajectories = new TrajectoryCache();
    private final Sections sections = new Sections();
    private final Map<Basis, Forecast> forecasts = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override protected boolean removeEldestEntry(Map.Entry<Basis, Forecast> eldest) {
            return size() > MOST_FORECASTS;
        }
    };

    /** What a class starts from. */
    public interface Priors {
        /**
         * @param room the plan's place
         * @return the same for the same class, always
         */
        RoomFit of(String classId, String room);
    }

    /** What a forecast is computed from. */
    private record Basis(RoomFit prior, ClassCandles candles) { }

    /** What was computed. */
    private record Forecast(Map<SeatNumber, CureOutlook> outlooks, RoomFit fit, String words) { }

    public RoomCureClock(Priors priors) {
        this.priors = priors;
    }

    /** As in a room that has taught nothing. */
    @Override public Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
        return clocksOf("", live, now);
    }

    @Override public Map<SeatNumber, CandleClock> clocksOf(String classId, LiveClass live, Instant now) {
        if (live.plan().candles().isEmpty()) {
            return byFigure.clocks(live, now);
        }
        ClassCandles candles = ClassCandles.of(live);
        return candles.poured().isEmpty() ? Map.of() : clocks(live, candles, forecast(classId, live, candles));
    }

    /** A tap after the cure says as little of the room as it says nothing of when the candle was firm. */
    private static Map<SeatNumber, CandleClock> clocks(LiveClass live, ClassCandles candles, Forecast forecast) {
        Progress progress = live.progress();
        Map<SeatNumber, CandleClock> clocks = new TreeMap<>();
        candles.poured().forEach(p -> clocks.put(p.seat(), clock(p, live.seat(p.seat()).flatMap(progress::settledAt),
                forecast.outlooks().get(p.seat()))));
        return CandleClock.saidTogether(clocks);
    }

    @Override public Cooling cooling(String classId, LiveClass live, Instant now) {
        if (live.plan().candles().isEmpty()) {
            return new Cooling(byFigure.clocks(live, now), RoomView.NONE);
        }
        ClassCandles candles = ClassCandles.of(live);
        if (candles.poured().isEmpty()) {
            return new Cooling(Map.of(), room(live, candles, "", Optional.empty(), now));
        }
        Forecast forecast = forecast(classId, live, candles);
        Map<SeatNumber, CandleClock> clocks = clocks(live, candles, forecast);
        Optional<CutAway> cutAway = WallCandle.of(candles, clocks)
                .map(wall -> cut(wall.candle(), wall.seats(), forecast.fit(), now));
        return new Cooling(clocks, room(live, candles, forecast.words(), cutAway, now));
    }

    @Override public Optional<CutAway> cutAway(String classId, LiveClass live, SeatNumber seat, Instant now) {
        if (live.plan().candles().isEmpty()) {
            return Optional.empty();
        }
        ClassCandles candles = ClassCandles.of(live);
        return candles.poured().stream().filter(p -> p.seat().equals(seat))
                .filter(p -> live.seat(seat).flatMap(live.progress()::settledAt).isEmpty()).findFirst()
                .map(p -> cut(p, List.of(seat.value()), forecast(classId, live, candles).fit(), now));
    }

    /**
     * What a class has taught about its room.
     *
     * @param prior what it is to be added to
     * @return empty if nothing was seen in it
     */
    public Optional<RoomFit> lesson(LiveClass live, RoomFit prior) {
        if (live.plan().candles().isEmpty()) {
            return Optional.empty();
        }
        ClassCandles candles = ClassCandles.of(live);
        if (candles.evidence().isEmpty()) {
            return Optional.empty();
        }
        synchronized (trajectories) {
            return Optional.of(RoomPosterior.of(prior, candles.evidence(), trajectories).fit());
        }
    }

    // ---- the forecast

    private Forecast forecast(String classId, LiveClass live, ClassCandles candles) {
        RoomFit prior = classId.isEmpty() ? RoomFit.untaught() : priors.of(classId, live.plan().place());
        Basis basis = new Basis(prior, candles);
        synchronized (trajectories) {
            Forecast known = forecasts.get(basis);
            if (known != null) {
                return known;
            }
            RoomPosterior posterior = RoomPosterior.of(prior, candles.evidence(), trajectories);
            Map<SeatNumber, CureOutlook> outlooks = outlooks(candles, posterior);
            String words = candles.latest().map(seen -> {
                ClassCandles before = ClassCandles.without(live, seen);
                return FitWords.of(seen, candles.poured(), outlooks, outlooks(before,
                        RoomPosterior.of(prior, before.evidence(), trajectories)));
            }).orElse("");
            Forecast made = new Forecast(outlooks, posterior.fit(), words);
            forecasts.put(basis, made);
            return made;
        }
    }

    /** Candles that nobody looked at and that are alike have one outlook. */
    private Map<SeatNumber, CureOutlook> outlooks(ClassCandles candles, RoomPosterior posterior) {
        List<String> seen = candles.evidence().stream().map(e -> e.candle().id()).toList();
        Map<Object, CureOutlook> alike = new HashMap<>();
        Map<SeatNumber, CureOutlook> outlooks = new TreeMap<>();
        for (PouredCandle p : candles.poured()) {
            CuringCandle curing = p.curing();
            Object key = seen.contains(curing.id()) ? curing : List.of(curing.coolingCase(), curing.calibratedWax());
            outlooks.put(p.seat(), alike.computeIfAbsent(key, k -> CureOutlook.of(curing, posterior, trajectories)));
        }
        return outlooks;
    }

    private static CandleClock clock(PouredCandle p, Optional<Instant> settled, CureOutlook outlook) {
        ReadyWindow ready = settled.map(ReadyWindow::byHand).orElseGet(() -> window(p, outlook.ready()));
        boolean open = settled.isEmpty();
        CureDetail detail = new CureDetail(p.candle().id(), p.candle().name(),
                Optional.of(outlook.skin()).filter(s -> open).map(skin -> window(p, skin)),
                Optional.of(outlook.firm()).filter(f -> open).map(firm -> window(p, firm)));
        return new CandleClock(p.pouredAt(), ready, p.judgedSetAt(), Optional.of(detail));
    }

    private static ReadyWindow window(PouredCandle p, MinuteRange range) {
        return new ReadyWindow(p.after(range.p10()), p.after(range.p50()), p.after(range.p90()),
                ReadyWindow.Basis.COMPUTED);
    }

    // ---- what is shown of the room

    private CutAway cut(PouredCandle p, List<Integer> seats, RoomFit fit, Instant now) {
        return new CutAway(seats, p.candle().name(), p.candle().vessel(), p.candle().tableTop(),
                sections.at(p.curing().coolingCase(), fit.lossMedian(), p.minutesAt(now)));
    }

    private static RoomView room(LiveClass live, ClassCandles candles, String words, Optional<CutAway> cutAway,
                                 Instant now) {
        List<RoomView.Choice> choices = new ArrayList<>();
        live.plan().candles().forEach(c -> choices.add(new RoomView.Choice(c.id(), c.name())));
        Map<Integer, String> chosen = new TreeMap<>();
        for (Seat seat : live.seats()) {
            seat.candle().ifPresent(c -> chosen.put(seat.number().value(), c));
        }
        Candle first = live.plan().candles().get(0);
        List<Observation> seen = candles.observations();
        return new RoomView(words, choices, chosen,
                Optional.of(warmth(seen, Observation.Kind.ROOM, first.roomCelsius())),
                Optional.of(warmth(seen, Observation.Kind.POUR, first.pourCelsius())), cutAway,
                cutAway.flatMap(cut -> nextMinute(candles, cut, now)));
    }

    /** The latest of its kind, else the plan's. */
    private static RoomView.Warmth warmth(List<Observation> seen, Observation.Kind kind, double planned) {
        return seen.stream().filter(o -> o.kind() == kind)
                .max(Comparator.comparing(Observation::at))
                .map(o -> new RoomView.Warmth(o.celsius(), Optional.of(o.at())))
                .orElseGet(() -> new RoomView.Warmth(planned, Optional.empty()));
    }

    /** When the drawing's candle is a whole minute older; empty once nothing moves in it any more. */
    private static Optional<Instant> nextMinute(ClassCandles candles, CutAway cut, Instant now) {
        int last = cut.seats().get(cut.seats().size() - 1);
        Instant poured = candles.poured().stream().filter(p -> p.seat().value() == last).findFirst().orElseThrow()
                .pouredAt();
        long minutes = Math.max(0, Duration.between(poured, now).toMinutes());
        return cut.section().solidFraction() >= 1 ? Optional.empty()
                : Optional.of(poured.plusSeconds((minutes + 1) * 60));
    }
}
