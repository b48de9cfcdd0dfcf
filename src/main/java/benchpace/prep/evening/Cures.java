package benchpace.prep.evening;

import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.LossTrajectories;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.TrajectoryCache;
import benchpace.cure.solver.CureMilestones;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.StandardNormal;
import benchpace.plan.Candle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * How long the candles of an evening take from the pour until they may be handled. Computed as the live board computes
 * a poured candle: the room's loss and its ready fraction are drawn for the evening, each candle's own departure from
 * the model for the candle. Where a plan names no candle, or one that cannot be computed, its own figure with the
 * spread that pace gives it.
 */
final class Cures {
    /** What one seat makes. @param trajectories its candle solved; @param ownSd of its own departure, in ln(loss) */
    private record Computed(LossTrajectories trajectories, double ownSd) { }

    private final CureBasis basis;
    private final List<Computed> computed;
    private final RoomFit room;
    private final PacePriors.Cure planned;
    private final double planMinutes;

    Cures(Setting setting, TrajectoryCache cache) {
        room = setting.beliefs().room();
        planned = setting.beliefs().pace().cure();
        planMinutes = setting.plan().plannedCure().toMillis() / 60_000.0;
        boolean pours = setting.plan().pour().isPresent();
        computed = pours ? computed(setting, cache) : List.of();
        basis = !pours ? CureBasis.NONE : computed.isEmpty() ? CureBasis.PLANNED : CureBasis.COMPUTED;
    }

    /** What each seat makes; nobody's if the plan names no candle or one has a fault. */
    private static List<Computed> computed(Setting setting, TrajectoryCache cache) {
        List<Computed> computed = new ArrayList<>();
        for (String id : setting.candles()) {
            Candle candle = setting.plan().candle(id).orElseThrow();
            Optional<TableCase> table = tableCase(candle);
            if (table.isEmpty()) {
                return List.of();
            }
            CuringCandle curing = new CuringCandle(id, table.get().coolingCase(), candle.wax().calibrated());
            computed.add(new Computed(cache.of(curing.coolingCase()), curing.ownSd()));
        }
        return computed;
    }

    private static Optional<TableCase> tableCase(Candle c) {
        TableCase table = TableCase.of(c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(), c.roomCelsius(),
                c.pourCelsius(), c.tableTop(), 1);
        return table.fault().isPresent() ? Optional.empty() : Optional.of(table);
    }

    CureBasis basis() {
        return basis;
    }

    /** What the candles of one evening share. */
    Evening evening(SplittableRandom random) {
        double z = StandardNormal.draw(random);
        double fraction = room.readyMean() + room.readySd() * StandardNormal.draw(random);
        return new Evening(z, room.logLossMean() + room.logLossSd() * z, fraction);
    }

    /** @param classZ where it lies among evenings; @param logLoss of its room; @param ready the fraction judged so */
    record Evening(double classZ, double logLoss, double ready) { }

    /** Minutes from the pour until the candle of {@code seat} may be handled, at most a day. */
    double minutes(Evening evening, int seat, SplittableRandom random) {
        double z = StandardNormal.draw(random);
        if (basis != CureBasis.COMPUTED) {
            return planned.minutes(planMinutes, evening.classZ(), z);
        }
        Computed one = computed.get(seat);
        return Math.min(CureMilestones.HORIZON_MINUTES,
                one.trajectories().readyMinutes(evening.logLoss() + one.ownSd() * z, evening.ready()));
    }
}
