package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.report.ActivityNetwork.Activity;
import benchpace.report.Part.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
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
 * @param bySeats the same of a seat at work, by number
 * @param byKinds the same of all parts of another kind, of those kinds that held it at all
 * @param awayMinutes the same of guests away from the table for a moment
 * @param spareMinutes how much later each candle could have been ready without anybody waiting for it, by seat
 */
public record WhatHeld(double readyMinutes, int lastSeat, List<Link> links, Map<Integer, Double> bySteps,
                       Map<Integer, Double> bySeats, Map<Kind, Double> byKinds, double awayMinutes,
                       Map<Integer, Double> spareMinutes) {
    private static final double ROUNDING = 1e-9;
    /** So much over the plan is worth a look: two whole minutes, as they are told. */
    static final double WORTH_A_LOOK_MINUTES = 1.5;

    /**
     * A part on the way, all its stretches that follow one another taken together.
     *
     * @param plannedMinutes what the plan gives it
     * @param awayMinutes how much of it its guest was away
     */
    public record Link(Part part, double fromMinutes, double toMinutes, double plannedMinutes, double awayMinutes) {
        public double minutes() {
            return toMinutes - fromMinutes;
        }

        /** Minutes at it beyond the plan, at least 0. */
        public double overMinutes() {
            return Math.max(0, minutes() - awayMinutes - plannedMinutes);
        }

        /** Whether it took two minutes or more longer than the plan, as whole minutes are told. */
        public boolean isOver() {
            return overMinutes() >= WORTH_A_LOOK_MINUTES;
        }

        private boolean goesOnIn(Link next) {
            return part.kind() == next.part.kind() && part.seat() == next.part.seat()
                    && part.step() == next.part.step();
        }

        /** The plan's minutes of the first stretch are those of the whole step. */
        private Link with(Link next) {
            return new Link(part, fromMinutes, next.toMinutes, plannedMinutes, awayMinutes + next.awayMinutes);
        }
    }

    public WhatHeld {
        links = List.copyOf(links);
        bySteps = Collections.unmodifiableMap(new LinkedHashMap<>(bySteps));
        bySeats = Collections.unmodifiableMap(new LinkedHashMap<>(bySeats));
        Map<Kind, Double> kinds = new EnumMap<>(Kind.class);
        kinds.putAll(byKinds);
        byKinds = Collections.unmodifiableMap(kinds);
        spareMinutes = Collections.unmodifiableMap(new LinkedHashMap<>(spareMinutes));
    }

    /**
     * Looks back on a class.
     *
     * @param candles by seat, those that the class waits for: not of seats that share another's
     * @return empty if there are none
     */
    public static Optional<WhatHeld> of(ClassTrack track, Map<Integer, CandleTime> candles) {
        if (candles.isEmpty()) {
            return Optional.empty();
        }
        ClassNetwork.Made made = ClassNetwork.of(track, candles);
        ActivityNetwork<Part> network = made.network();
        List<Part> path = network.criticalPath();
        List<Link> links = links(made, path);
        Saving saving = new Saving(made);
        Map<Kind, Double> byKinds = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            double minutes = kind == Kind.STEP ? 0 : saving.of(p -> p.kind() == kind);
            if (minutes > ROUNDING) {
                byKinds.put(kind, minutes);
            }
        }
        Map<Integer, Double> spare = new LinkedHashMap<>();
        candles.keySet().stream().sorted()
                .forEach(s -> spare.put(s, network.slack(new Part(Kind.CURE, s, track.pourStep()))));
        return Optional.of(new WhatHeld(network.length(), path.get(path.size() - 1).seat(), links,
                saving.each(links, Part::step), saving.each(links, Part::seat), byKinds, saving.ofPauses(), spare));
    }

    private static List<Link> links(ClassNetwork.Made made, List<Part> path) {
        List<Link> links = new ArrayList<>();
        for (Part part : path) {
            Link link = new Link(part, made.network().earliestStart(part), made.network().earliestFinish(part),
                    made.planned().get(part), made.away().get(part));
            if (link.minutes() <= ROUNDING) {
                continue;
            }
            Link last = links.isEmpty() ? null : links.get(links.size() - 1);
            if (last != null && last.goesOnIn(link)) {
                links.set(links.size() - 1, last.with(link));
            } else {
                links.add(link);
            }
        }
        return links;
    }

    /** How much earlier the class would have been over had some of its parts kept to the plan. */
    private record Saving(ClassNetwork.Made made) {
        double of(Predicate<Part> which) {
            return made.network().length()
                    - made.network().lengthWith(a -> which.test(a.id()) ? kept(a) : a.length());
        }

        /** A pause stays: who was away is not slow. */
        private double kept(Activity<Part> activity) {
            return Math.min(activity.length(),
                    made.planned().get(activity.id()) + made.away().get(activity.id()));
        }

        double ofPauses() {
            return made.network().length() - made.network().lengthWith(a -> a.length() - made.away().get(a.id()));
        }

        /** One figure for each step or seat that has a part at work on the way to the last candle. */
        Map<Integer, Double> each(List<Link> links, ToIntFunction<Part> key) {
            List<Map.Entry<Integer, Double>> figures = new ArrayList<>();
            links.stream().map(Link::part).filter(p -> p.kind() == Kind.STEP).mapToInt(key).distinct().forEach(k -> {
                double minutes = of(p -> p.kind() == Kind.STEP && key.applyAsInt(p) == k);
                if (minutes > ROUNDING) {
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
