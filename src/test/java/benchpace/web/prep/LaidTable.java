package benchpace.web.prep;

import benchpace.live.ClassEvent;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import benchpace.web.TestBoard;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** A class tomorrow whose plan says all that there is to say of the day before. */
public final class LaidTable {
    public static final int SEATS = 6;

    private LaidTable() { }

    /** Wicks at each place, of which some are to be bought, scales that all share, a melter, and a circuit too full. */
    public static Plan plan() {
        Loads loads = new Loads(Optional.of(LoadConvention.OF_WAX), OptionalDouble.of(10), OptionalDouble.of(8.5),
                OptionalDouble.of(60));
        return TestPlans.evening().with(new Kit(OptionalDouble.of(21), 5, 60, OptionalInt.of(120), loads,
                List.of(new Melter("pot", "Nine-litre melter", "soy", OptionalDouble.of(8600), 900,
                        OptionalDouble.of(1000), OptionalDouble.of(0.7), Melter.ScentedIn.JUG)),
                List.of(plugged("kettle", "Kettle", OptionalDouble.of(1800), Optional.empty(), 10),
                        plugged("pot-1", "Nine-litre melter", OptionalDouble.empty(), Optional.of("pot"), 240)),
                List.of(circuit("wall-a", "Sockets by the window", 20), circuit("wall-b", "Sockets at the bar", 15)),
                List.of(supply("wick", "Wick, cotton", 1, 0, 10, 50, 2, false, OptionalDouble.of(6.5), "Table"),
                        supply("label", "Label", 1, 0, 0, 10, 40, false, OptionalDouble.of(2), "Table"),
                        supply("jug", "Jug", 0.5, 0, 0, 1, 6, true, OptionalDouble.empty(), "Kitchen"),
                        supply("scales", "Scales", 0, 2, 0, 1, 2, true, OptionalDouble.empty(), "Kitchen"),
                        supply("wipe", "Wipes", 0, 8, 25, 20, 0, false, OptionalDouble.empty(), ""))));
    }

    private static Appliance plugged(String id, String name, OptionalDouble watts, Optional<String> melter,
                                     double minutes) {
        return new Appliance(id, name, watts, melter, Optional.of("wall-a"), minutes);
    }

    private static Circuit circuit(String id, String name, double amps) {
        return new Circuit(id, name, OptionalDouble.of(120), OptionalDouble.of(amps),
                Optional.of(Circuit.Rule.NORTH_AMERICA));
    }

    private static Supply supply(String id, String name, double perSeat, double perClass, double spare, double pack,
                                 double stock, boolean reusable, OptionalDouble price, String box) {
        return new Supply(id, name, perSeat, perClass, spare, pack, stock, reusable, price, box);
    }

    /** Sets it up to begin 23 hours from now. @return its id */
    static String on(TestBoard board) {
        return on(board, plan(), Duration.ofHours(23));
    }

    static String on(TestBoard board, Plan plan, Duration away) {
        return board.boards().create(plan, "Tomorrow", board.clock.instant().plus(away),
                IntStream.rangeClosed(1, SEATS).mapToObj(n -> new ClassEvent.Place(new SeatNumber(n), "")).toList(),
                "instructor").id();
    }
}
