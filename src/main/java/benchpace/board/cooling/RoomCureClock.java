package benchpace.board.cooling;

import benchpace.board.attempt.Faults;
import benchpace.cure.CuringCandle;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.plan.SeatNumber;
import benchpace.report.whatif.SmallerCandles;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The cure as computed for each candle and corrected by what this room shows. A plan that names no candle keeps its own
 * figure. A forecast depends on what was poured and seen and not on the hour, so it is computed once for each new fact
 * and kept; nothing here runs while a class's lock is held. Safe for use by many threads.
 */
public final class RoomCureClock implements CureClock {
    private static final Logger LOG = System.getLogger(RoomCureClock.class.getName());
    private static final int MOST_FORECASTS = 64;

    private final Priors priors;
    private final PlanCureClock byFigure = new PlanCureClock();
    private final TrajectoryCache trajectories = new TrajectoryCache();
    private final Sections sections;
    private final Faults faults = new Faults();
    private final Map<String, Object> locks = new ConcurrentHashMap<>();
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
    private record Forecast(Map<SeatNumber, CureOutlook> outlooks, RoomFit fit, Optional<Refit> refit) { }

    public RoomCureClock(Priors priors) {
        this(priors, new Sections());
    }

    RoomCureClock(Priors priors, Sections sections) {
        this.priors = priors;
        this.sections = sections;
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
            return new Cooling(Map.of(), RoomView.of(live, Optional.empty()));
        }
        Forecast forecast = forecast(classId, live, candles);
        return new Cooling(clocks(live, candles, forecast), RoomView.of(live, forecast.refit()));
    }

    @Override public Cooling byFigure(LiveClass live, Instant now) {
        return new Cooling(byFigure.clocks(live, now),
                live.plan().candles().isEmpty() ? RoomView.NONE : RoomView.of(live, Optional.empty()));
    }

    @Override public Map<Integer, CutAway> cutOpen(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                                   Instant now) {
        if (live.plan().candles().isEmpty() || clocks.values().stream().allMatch(CandleClock::settled)) {
            return Map.of();
        }
        ClassCandles candles = ClassCandles.of(live);
        RoomFit fit = forecast(classId, live, candles).fit();
        return cutOpen(classId, candles.poured().stream()
                .filter(p -> !p.left() && !clocks.get(p.seat()).settled()).toList(), fit, now);
    }

    /** One that cannot be cut open is left out and noted; only where none can be the drawings fail. */
    private Map<Integer, CutAway> cutOpen(String classId, List<PouredCandle> candles, RoomFit fit, Instant now) {
        Map<Integer, CutAway> cut = new TreeMap<>();
        List<RuntimeException> failed = new ArrayList<>();
        for (PouredCandle p : candles) {
            try {
                cut.put(p.seat().value(), cut(p, fit, now));
            } catch (RuntimeException e) {
                failed.add(e);
            }
        }
        if (cut.isEmpty() && !failed.isEmpty()) {
            throw failed.get(0);
        }
        failed.stream().filter(e -> faults.isNew(classId, e)).forEach(e ->
                LOG.log(Level.ERROR, "class " + classId + ": a candle cannot be cut open", e));
        return cut;
    }

    @Override public Optional<CutAway> cutAway(String classId, LiveClass live, SeatNumber seat, Instant now) {
        if (live.plan().candles().isEmpty()) {
            return Optional.empty();
        }
        ClassCandles candles = ClassCandles.of(live);
        return candles.poured().stream().filter(p -> p.seat().equals(seat))
                .filter(p -> live.seat(seat).flatMap(live.progress()::settledAt).isEmpty()).findFirst()
                .map(p -> cut(p, forecast(classId, live, candles).fit(), now));
    }

    @Override public Optional<SmallerCandles> smaller(String classId, LiveClass live, double fillShare) {
        if (live.plan().candles().isEmpty()) {
            return Optional.empty();
        }
        ClassCandles candles = ClassCandles.of(live);
        Map<Integer, SmallerCandles.Both> both = new TreeMap<>();
        candles.poured().forEach(p -> p.smaller(fillShare).ifPresent(table -> both.put(p.seat().value(),
                new SmallerCandles.Both(trajectories.of(p.curing().coolingCase()),
                        trajectories.of(table.coolingCase()), p.curing().ownSd()))));
        return both.isEmpty() ? Optional.empty()
                : Optional.of(new SmallerCandles(fillShare, forecast(classId, live, candles).fit(), both));
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
        return Optional.of(RoomPosterior.of(prior, candles.evidence(), trajectories).fit());
    }

    // ---- the forecast

    private Forecast forecast(String classId, LiveClass live, ClassCandles candles) {
        RoomFit prior = classId.isEmpty() ? RoomFit.untaught() : priors.of(classId, live.plan().place());
        Basis basis = new Basis(prior, candles);
        synchronized (locks.computeIfAbsent(classId, id -> new Object())) { // no class waits for another's
            return known(basis).orElseGet(() -> keep(basis, forecast(live, basis)));
        }
    }

    private Forecast forecast(LiveClass live, Basis basis) {
        ClassCandles candles = basis.candles();
        RoomPosterior posterior = RoomPosterior.of(basis.prior(), candles.evidence(), trajectories);
        Map<SeatNumber, CureOutlook> outlooks = outlooks(candles, posterior);
        Optional<Refit> refit = candles.latest().map(seen -> Refit.of(seen, candles.poured(), outlooks,
                outlooksWithout(live, seen, basis.prior())));
        return new Forecast(outlooks, posterior.fit(), refit);
    }

    /** What was forecast before something was seen; mostly that is still known. */
    private Map<SeatNumber, CureOutlook> outlooksWithout(LiveClass live, Observation seen, RoomFit prior) {
        ClassCandles before = ClassCandles.without(live, seen);
        return known(new Basis(prior, before)).map(Forecast::outlooks).orElseGet(() ->
                outlooks(before, RoomPosterior.of(prior, before.evidence(), trajectories)));
    }

    private Optional<Forecast> known(Basis basis) {
        synchronized (forecasts) {
            return Optional.ofNullable(forecasts.get(basis));
        }
    }

    private Forecast keep(Basis basis, Forecast made) {
        synchronized (forecasts) {
            forecasts.put(basis, made);
        }
        return made;
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
        ReadyWindow ready = settled.map(ReadyWindow::byHand).orElseGet(() -> p.computed(outlook.ready()));
        boolean open = settled.isEmpty();
        CureDetail detail = new CureDetail(p.candle().id(), p.candle().name(),
                Optional.of(outlook.skin()).filter(s -> open).map(p::computed),
                Optional.of(outlook.firm()).filter(f -> open).map(p::computed));
        return new CandleClock(p.pouredAt(), ready, p.judgedSetAt(), Optional.of(detail));
    }

    // ---- what is shown of the room

    /** All candles of a class step on together, with the minutes of the clock. */
    private CutAway cut(PouredCandle p, RoomFit fit, Instant now) {
        return new CutAway(p.seat().value(), p.candle().name(), p.candle().vessel(), p.candle().tableTop(),
                sections.at(p.curing().coolingCase(), fit.lossMedian(),
                        p.minutesAt(now.truncatedTo(ChronoUnit.MINUTES))));
    }
}
