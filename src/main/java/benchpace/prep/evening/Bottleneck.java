package benchpace.prep.evening;

import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A step whose stations cannot serve all seats in the time promised, even if everything goes as planned and no station
 * ever idles: common practice and arithmetic, no odds. Of the promise there is left for the turns what the other steps
 * and the work of the last seat itself do not take.
 *
 * @param seats          how many wait for their turn
 * @param turns          how long all of them take, one after another at each station
 * @param left           what the promise leaves for that; zero if nothing
 * @param stationsNeeded how many stations would do, each as quick; empty if no number does
 * @param seatsServed    how many seats the stations there are serve in that time
 * @param promiseNeeded  the shortest promise that the stations there are can keep
 */
public record Bottleneck(StepId step, int seats, Stations stations, Duration turns, Duration left,
                         OptionalInt stationsNeeded, int seatsServed, Duration promiseNeeded) {

    /** Those of a plan, in its order. @param promisedMinutes from the class's start */
    public static List<Bottleneck> of(Plan plan, int seats, double promisedMinutes) {
        Duration promised = Duration.ofMillis(Math.round(promisedMinutes * 60_000));
        return plan.steps().stream().filter(s -> s.stations().isPresent())
                .map(s -> of(plan, s, seats, promised))
                .filter(b -> b.turns().compareTo(b.left()) > 0)
                .toList();
    }

    private static Bottleneck of(Plan plan, Step step, int seats, Duration promised) {
        Stations stations = step.stations().orElseThrow();
        Duration others = plan.planned().minus(stations.each());
        Duration rest = promised.minus(others);
        Duration left = rest.isNegative() ? Duration.ZERO : rest;
        OptionalInt needed = IntStream.rangeClosed(1, seats)
                .filter(n -> new Stations(n, stations.what(), stations.each()).forAll(seats).compareTo(left) <= 0)
                .findFirst();
        long rounds = left.dividedBy(stations.each());
        int served = (int) Math.min(seats, rounds * stations.atOnce());
        return new Bottleneck(step.id(), seats, stations, stations.forAll(seats), left, needed, served,
                others.plus(stations.forAll(seats)));
    }
}
