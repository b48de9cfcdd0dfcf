package benchpace.web.prep;

import benchpace.live.ClassEvent;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Supply;
import benchpace.web.TestBoard;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** A class tomorrow whose plan says what is laid out. */
final class LaidTable {
    static final int SEATS = 6;

    private LaidTable() { }

    /** Wicks at each place, of which some are to be bought, and scales that all share. */
    static Plan plan() {
        Plan plan = TestPlans.evening();
        Kit kit = new Kit(OptionalDouble.empty(), 0, 0, OptionalInt.empty(), Loads.NONE, List.of(), List.of(),
                List.of(), List.of(
                        new Supply("wick", "Wick, cotton", 1, 0, 0, 50, 2, false, OptionalDouble.of(6.5), ""),
                        new Supply("scales", "Scales", 0, 2, 0, 1, 2, true, OptionalDouble.empty(), "")));
        return new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                plan.steps(), plan.activities(), plan.candles(), kit);
    }

    /** @return its id */
    static String on(TestBoard board) {
        return board.boards().create(plan(), "Tomorrow", board.clock.instant().plus(Duration.ofHours(23)),
                IntStream.rangeClosed(1, SEATS).mapToObj(n -> new ClassEvent.Place(new SeatNumber(n), "")).toList(),
                "instructor").id();
    }
}
