package benchpace.board.cooling;

import benchpace.cure.CoolingCase;
import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.cure.solver.CureCurves;
import benchpace.cure.solver.CureSolver;

/** Candles tried out on paper, before a class. Safe for use by many threads. */
public final class CureTrials {
    private final TrajectoryCache trajectories = new TrajectoryCache();

    /**
     * What is to be expected of a candle.
     *
     * @param outlook in minutes from the pour
     * @param curves  the middle course between its ranges
     */
    public record Trial(TableCase table, CureOutlook outlook, CureCurves curves) { }

    /**
     * @param table a candle without a fault
     * @param room  what the room has taught
     */
    public synchronized Trial of(TableCase table, RoomFit room) {
        CoolingCase computed = table.coolingCase();
        CuringCandle candle = new CuringCandle("paper", computed, table.wax().calibrated());
        CureOutlook outlook = CureOutlook.of(candle, RoomPosterior.of(room), trajectories);
        return new Trial(table, outlook, CureSolver.solve(computed.withLossTimes(room.lossMedian())).curves());
    }
}
