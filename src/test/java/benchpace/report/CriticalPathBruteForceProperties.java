package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.engine.ClassSimulator.Habit;
import benchpace.report.ActivityNetwork.Activity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** The critical path against every path there is, each gone along from its end to its beginning. */
class CriticalPathBruteForceProperties {
    private static final double ROUNDING = 1e-6;
    private static final int MOST_PATHS = 2_000_000;

    /** The lengths of all paths that end with an activity, by the definition alone. */
    private static final class Paths<K> {
        private final Map<K, Activity<K>> activities = new HashMap<>();
        private final ToDoubleFunction<Activity<K>> length;
        private double longest;
        private int count;

        Paths(List<Activity<K>> all, ToDoubleFunction<Activity<K>> length) {
            all.forEach(a -> activities.put(a.id(), a));
            this.length = length;
        }

        double longestTo(Iterable<K> ends) {
            ends.forEach(end -> back(end, 0));
            return longest;
        }

        private void back(K id, double behind) {
            Activity<K> activity = activities.get(id);
            double all = behind + length.applyAsDouble(activity);
            if (activity.after().isEmpty()) {
                longest = Math.max(longest, all);
                count++;
            }
            if (count < MOST_PATHS) {
                activity.after().forEach(before -> back(before, all));
            }
        }
    }

    @Property(tries = 300)
    void the_length_of_a_random_network_is_that_of_its_longest_path(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll @IntRange(min = 1, max = 12) int size) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Activity<Integer>> all = new ArrayList<>();
        for (int a = 0; a < size; a++) {
            Set<Integer> after = new LinkedHashSet<>();
            for (int before = 0; before < a; before++) {
                if (random.nextInt(3) == 0) {
                    after.add(before);
                }
            }
            all.add(new Activity<>(a, random.nextInt(10), after));
        }
        ActivityNetwork<Integer> network = new ActivityNetwork<>(all);
        assertThat(network.length()).isEqualTo(new Paths<>(all, Activity::length).longestTo(network.ids()));
        int shorter = random.nextInt(size);
        ToDoubleFunction<Activity<Integer>> half = a -> a.id() == shorter ? a.length() / 2 : a.length();
        assertThat(network.lengthWith(half)).isEqualTo(new Paths<>(all, half).longestTo(network.ids()));
        assertThat(network.criticalPath().stream().mapToDouble(id -> all.get(id).length()).sum())
                .isEqualTo(network.length());
    }

    @Property(tries = 60)
    void what_held_a_small_class_is_what_its_longest_path_says(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        SimulatedPasts.Past past = SimulatedPasts.of(seed, 2, Habit.USUAL);
        if (past.candles().isEmpty()) {
            return;
        }
        ClassNetwork.Made made = ClassNetwork.of(past.track(), past.candles());
        ActivityNetwork<Part> network = made.network();
        List<Activity<Part>> all = network.ids().stream().map(id -> new Activity<>(id,
                network.earliestFinish(id) - network.earliestStart(id), made.network().after(id))).toList();
        List<Part> ends = network.ids().stream().filter(p -> p.kind() == Part.Kind.CURE).toList();
        Paths<Part> paths = new Paths<>(all, Activity::length);
        double longest = paths.longestTo(ends);
        assertThat(paths.count).as("paths").isPositive().isLessThan(MOST_PATHS);
        assertThat(network.length()).isCloseTo(longest, within(ROUNDING));
        WhatHeld held = WhatHeld.of(past.track(), past.candles()).orElseThrow();
        held.bySteps().forEach((step, minutes) -> {
            double kept = new Paths<>(all, a -> a.id().kind() == Part.Kind.STEP && a.id().step() == step
                    ? Math.min(a.length(), made.planned().get(a.id()) + made.away().get(a.id())) : a.length())
                    .longestTo(ends);
            assertThat(minutes).isCloseTo(longest - kept, within(ROUNDING));
        });
    }
}
