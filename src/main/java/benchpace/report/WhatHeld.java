package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.report.ActivityNetwork.Activity;
import benchpace.report.Part.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/**
 * What the last candle waited for, from the class's start on, and what that cost: the critical path of the class as it
 * happened. What a step, a seat or the openings held the class for is by how much earlier the last candle would have
 * been ready had all their parts kept to the plan and everything else taken the time it took. Such minutes do not add
 * up: where two seats were slow together, neither alone held anybody.
 *
 * @param readyMinutes when the last candle was ready
 * @param lastSeat whose candle that was
 * @param links the parts on the way there, in order, without gaps; those that took no time left out
 * @param bySteps minutes that a step held the class, by index, the most first; only those above 0
 * @param bySeats the same of a seat, by number
 * @param openingsMinutes the same of all openings
 * @param arrivalsMinutes the same of guests who came late
 * @param cureMinutes the same of the candles having set more slowly than planned
 * @param spareMinutes how much later each candle could have been ready without anybody waiting for it
 */
public record WhatHeld(double readyMinutes, int lastSeat, List<Link> links, Map<Integer, Double> bySteps,
                       Map<Integer, Double> bySeats, double openingsMinutes, double arrivalsMinutes,
                       double cureMinutes, Map<Integer, Double> spareMinutes) {

    /** A part on the way. @param plannedMinutes what the plan gives it */
    public record Link(Part part, double fromMinutes, double toMinutes, double plannedMinutes) {
        public double minutes() {
            return toMinutes - fromMinutes;
        }
    }

    public WhatHeld {
        links = List.copyOf(links);
    }

    /**
     * Looks back on a class.
     *
     * @param candles by seat, those that the class waits for: not of seats that left or share another's
     * @return empty if there are none
     */
    public static Optional<WhatHeld> of(ClassTrack track, Map<Integer, CandleTime> candles) {
        if (candles.isEmpty()) {
            return Optional.empty();
        }
        ClassNetwork.Made made = ClassNetwork.of(track, candles);
        ActivityNetwork<Part> network = made.network();
        Saving saving = new Saving(made);
        List<Part> path = network.criticalPath();
        List<Link> links = path.stream()
                .map(p -> new Link(p, network.earliestStart(p), network.earliestFinish(p), made.planned().get(p)))
                .filter(l -> l.minutes() > 0).toList();
        Map<Integer, Double> spare = new LinkedHashMap<>();
        candles.keySet().stream().sorted()
                .forEach(s -> spare.put(s, network.slack(new Part(Kind.CURE, s, track.pourStep()))));
        return Optional.of(new WhatHeld(network.length(), path.get(path.size() - 1).seat(), links,
                saving.each(links, Part::step, p -> p.kind() == Kind.STEP || p.kind() == Kind.POURED_AGAIN),
                saving.each(links, Part::seat, p -> p.seat() > 0 && p.kind() != Kind.CURE),
                saving.of(p -> p.kind() == Kind.OPENING), saving.of(p -> p.kind() == Kind.ARRIVAL),
                saving.of(p -> p.kind() == Kind.CURE), spare));
    }

    /** How much earlier the class would have been over had some of its parts kept to the plan. */
    private record Saving(ClassNetwork.Made made) {
        double of(Predicate<Part> which) {
            double kept = made.network().lengthWith(a -> which.test(a.id()) ? kept(a) : a.length());
            return made.network().length() - kept;
        }

        private double kept(Activity<Part> activity) {
            return Math.min(activity.length(), made.planned().get(activity.id()));
        }

        /** One figure for each step or seat that has a part on the way to the last candle. */
        Map<Integer, Double> each(List<Link> links, ToIntFunction<Part> key, Predicate<Part> which) {
            List<Map.Entry<Integer, Double>> figures = new ArrayList<>();
            links.stream().map(Link::part).filter(which).mapToInt(key).distinct().forEach(k -> {
                double minutes = of(p -> which.test(p) && key.applyAsInt(p) == k);
                if (minutes > 0) {
                    figures.add(Map.entry(k, minutes));
                }
            });
            figures.sort(Map.Entry.<Integer, Double>comparingByValue(Comparator.reverseOrder())
                    .thenComparing(Map.Entry.comparingByKey()));
            Map<Integer, Double> ordered = new LinkedHashMap<>();
            figures.forEach(f -> ordered.put(f.getKey(), f.getValue()));
            return ordered;
        }
    }
}
