package benchpace.prep.evening;

import benchpace.pace.belief.PacePriors;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanVariants;
import java.util.Collections;
import java.util.Optional;

/** Makes the setting that a change leads to. */
final class Changes {
    private Changes() { }

    static Setting made(Change change, Setting setting) {
        Plan plan = setting.plan();
        if (change instanceof Change.FewerSeats c) {
            return setting.withSeats(setting.seats() - c.fewer());
        } else if (change instanceof Change.MoreHelp c) {
            return setting.withBeliefs(helped(setting.beliefs(), c.seenThenMinutes()));
        } else if (change instanceof Change.MoreStations c) {
            return setting.withPlan(PlanVariants.served(plan, c.step(), c.then()));
        } else if (change instanceof Change.Led c) {
            return setting.withPlan(PlanVariants.opened(plan, c.step(), Opening.LED));
        } else if (change instanceof Change.Free c) {
            return setting.withPlan(PlanVariants.opened(plan, c.step(), Opening.FREE));
        } else if (change instanceof Change.Beforehand c) {
            return setting.withPlan(PlanVariants.without(plan, c.step()));
        } else if (change instanceof Change.OtherCandle c) {
            return setting.withCandles(Collections.nCopies(setting.seats(), c.candle()));
        } else if (change instanceof Change.SmallerVessels c) {
            return setting.withPlan(PlanVariants.withCandles(plan,
                    candle -> PlanVariants.smaller(candle, c.fillShare()).orElse(candle)));
        } else if (change instanceof Change.CoolerPour c) {
            return setting.withPlan(PlanVariants.withCandles(plan,
                    candle -> cooler(candle, c.kelvin()).orElse(candle)));
        } else if (change instanceof Change.Longer c) {
            return setting.withPromisedMinutes(setting.promisedMinutes() + c.minutes());
        }
        throw new IllegalStateException("a change of no known kind: " + change);
    }

    private static Beliefs helped(Beliefs beliefs, double seenMinutes) {
        PacePriors.Stalls stalls = beliefs.pace().stalls();
        return new Beliefs(beliefs.pace().withStalls(new PacePriors.Stalls(stalls.odds(), stalls.lengths(),
                seenMinutes, stalls.claimOdds())), beliefs.room());
    }

    /** The same poured cooler; empty if its wax were not all liquid then. */
    static Optional<Candle> cooler(Candle c, double kelvin) {
        double pour = c.pourCelsius() - kelvin;
        return pour < Math.max(c.wax().liquidusCelsius(), Candle.COLDEST_POUR) ? Optional.empty()
                : Optional.of(new Candle(c.id(), c.name(), c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(),
                        c.roomCelsius(), pour, c.tableTop()));
    }
}
