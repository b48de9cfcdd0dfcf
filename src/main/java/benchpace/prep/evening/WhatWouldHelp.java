package benchpace.prep.evening;

import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.PlanVariants;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** Changed plans on the same evenings: what would help to be done in time, and what would not. */
public final class WhatWouldHelp {
    private static final int FEWER_SEATS = 2;
    /** Vessels a quarter smaller. */
    private static final double FILL_SHARE = 0.75;
    private static final double COOLER_KELVIN = 5;
    private static final double LONGER_MINUTES = 15;
    private static final int MOST_STEPS_TRIED = 3;

    private final Evenings base;
    private final TrajectoryCache cache;
    private final Evenings.Progress progress;
    private final List<List<Change>> alternatives = new ArrayList<>();

    private WhatWouldHelp(Evenings base, TrajectoryCache cache, Evenings.Progress progress) {
        this.base = base;
        this.cache = cache;
        this.progress = progress;
    }

    /**
     * The changes that apply to the setting of these evenings, those that help most first. Of steps that might be led
     * or free, and of smaller candles, the best of each kind.
     *
     * @param cache    of candles solved; the one the evenings were simulated with saves solving them again
     * @param progress told of all evenings of all changes together
     */
    public static List<Effect> of(Evenings base, TrajectoryCache cache, Evenings.Progress progress) {
        WhatWouldHelp helps = new WhatWouldHelp(base, cache, progress);
        helps.gather();
        return helps.effects();
    }

    private void gather() {
        Setting setting = base.setting();
        Plan plan = setting.plan();
        if (setting.seats() > FEWER_SEATS) {
            one(new Change.FewerSeats(FEWER_SEATS));
        }
        double seen = setting.beliefs().pace().stalls().seenMinutes();
        one(new Change.MoreHelp(seen, seen / 2));
        plan.steps().stream().filter(s -> s.stations().isPresent()).forEach(s -> {
            int then = s.stations().orElseThrow().atOnce() + 1;
            if (then <= Math.min(SeatNumber.MOST, setting.seats())) {
                one(new Change.MoreStations(s.id(), then));
            }
        });
        alternatives.add(longest(s -> PlanVariants.mayBeLed(plan, s), s -> new Change.Led(s.id())));
        alternatives.add(longest(s -> PlanVariants.mayBeFree(plan, s), s -> new Change.Free(s.id())));
        PlanVariants.wicks(plan).ifPresent(s -> one(new Change.Beforehand(s.id())));
        if (base.timetable().cure() == CureBasis.COMPUTED) {
            alternatives.add(smallerCandles());
            if (made().stream().anyMatch(c -> Changes.cooler(c, COOLER_KELVIN).isPresent())) {
                one(new Change.CoolerPour(COOLER_KELVIN));
            }
        }
        one(new Change.Longer(LONGER_MINUTES));
        alternatives.removeIf(List::isEmpty);
    }

    private void one(Change change) {
        alternatives.add(List.of(change));
    }

    /** A change each for the few longest steps of which something holds. */
    private List<Change> longest(Predicate<Step> which, Function<Step, Change> change) {
        return base.setting().plan().steps().stream().filter(which)
                .sorted(Comparator.comparing(Step::planned).reversed()).limit(MOST_STEPS_TRIED).map(change).toList();
    }

    /** What the seats make. */
    private List<Candle> made() {
        Plan plan = base.setting().plan();
        return base.setting().candles().stream().distinct().map(id -> plan.candle(id).orElseThrow()).toList();
    }

    /** The plan's candles that hold less than any made, and the vessels themselves smaller. */
    private List<Change> smallerCandles() {
        double least = made().stream().mapToDouble(Candle::fillGrams).min().orElse(0);
        List<Change> others = new ArrayList<>();
        for (Candle candle : base.setting().plan().candles()) {
            if (candle.fillGrams() < least) {
                others.add(new Change.OtherCandle(candle.id()));
            }
        }
        boolean canShrink = made().stream().anyMatch(c -> PlanVariants.smaller(c, FILL_SHARE).isPresent());
        if (canShrink) {
            others.add(new Change.SmallerVessels(FILL_SHARE));
        }
        return others;
    }

    private List<Effect> effects() {
        Comparator<Effect> best = Comparator.comparingDouble(Effect::gained)
                .thenComparingDouble(Effect::savedP50Minutes).reversed();
        int all = alternatives.stream().mapToInt(List::size).sum() * base.count();
        List<Effect> effects = new ArrayList<>();
        int done = 0;
        for (List<Change> kind : alternatives) {
            List<Effect> tried = new ArrayList<>();
            for (Change change : kind) {
                int before = done;
                tried.add(Effect.of(change, base, base.changed(Changes.made(change, base.setting()), cache,
                        (now, of) -> progress.at(before + now, all))));
                done += base.count();
            }
            effects.add(tried.stream().min(best).orElseThrow());
        }
        return effects.stream().sorted(best).toList();
    }
}
