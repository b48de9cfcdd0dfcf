package benchpace.prep;

import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.TableTop;
import benchpace.plan.TestPlans;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Invented plans with all that they can say of the day before. */
public final class TestKits {
    /** 110 g in a glass, six parts of fragrance to a hundred of wax. */
    public static final Candle AMBER = candle("amber-soy", soy(), 110, 0.06 / 1.06, 62);
    /** 90 g in a tin, without fragrance. */
    public static final Candle TIN = candle("tin-paraffin", paraffin(), 90, 0, 75);
    public static final Melter POT = new Melter("pot", "Nine-litre melter", "soy", OptionalDouble.of(8600), 900,
            OptionalDouble.of(1000), OptionalDouble.of(0.7), Melter.ScentedIn.JUG);
    public static final Circuit WALL = new Circuit("wall-a", "Sockets by the window", OptionalDouble.of(120),
            OptionalDouble.of(20), Optional.of(Circuit.Rule.NORTH_AMERICA));
    public static final Supply WICK = new Supply("wick", "Wick, cotton", 1, 0, 10, 50, 12, false,
            OptionalDouble.of(6.50), "");
    /** The limits of makers' documents that allow {@link #AMBER}. */
    public static final Loads LOADS = new Loads(Optional.of(LoadConvention.OF_WAX), OptionalDouble.of(10),
            OptionalDouble.of(8.5), OptionalDouble.of(93));
    /** One melter and a kettle on one circuit, and wicks. */
    public static final Kit KIT = new Kit(OptionalDouble.of(21), 5, 60, OptionalInt.of(120), LOADS, List.of(POT),
            List.of(appliance("kettle", 1800, "wall-a", 10), melterOn("pot-1", "pot", "wall-a", 240)), List.of(WALL),
            List.of(WICK));

    private TestKits() { }

    public static Wax soy() {
        return new Wax("soy", "Soy", 900, 2100, 2200, 135_000, 38, 50, 0.19, 0.34, false);
    }

    public static Wax paraffin() {
        return new Wax("paraffin", "Paraffin", 900, 2000, 2200, 200_000, 52, 58, 0.24, 0.3, false);
    }

    public static Candle candle(String id, Wax wax, double fillGrams, double fraction, double pourCelsius) {
        return new Candle(id, "Candle " + id, new Vessel("tumbler", "Tumbler", Vessel.Material.GLASS, 75, 3, 90), wax,
                fillGrams, fraction, 20, pourCelsius, TableTop.WOOD);
    }

    public static Appliance appliance(String id, double watts, String circuit, double onMinutes) {
        return new Appliance(id, "The " + id, OptionalDouble.of(watts), Optional.empty(), Optional.of(circuit),
                onMinutes);
    }

    public static Appliance melterOn(String id, String melter, String circuit, double onMinutes) {
        return new Appliance(id, "The " + id, OptionalDouble.empty(), Optional.of(melter), Optional.of(circuit),
                onMinutes);
    }

    /** An evening of these candles. */
    public static Plan plan(Kit kit, Candle... candles) {
        return new Plan(new PlanId("test-prep"), "Test prep", "", "", 6, TableShape.HORSESHOE,
                List.of(TestPlans.step("wicks", StepKind.HANDS_ON, Opening.LED, 6),
                        TestPlans.step("pour", StepKind.POUR, Opening.LED, 10),
                        TestPlans.step("cure", StepKind.CURE, Opening.FREE, 60)),
                List.of(), List.of(candles), kit);
    }

    /** {@link #KIT} and both candles. */
    public static Plan plan() {
        return plan(KIT, AMBER, TIN);
    }
}
