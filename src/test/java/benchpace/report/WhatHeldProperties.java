package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.pace.engine.ClassSimulator;
import benchpace.report.SimulatedPasts.Past;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** What the critical-path method promises of any network, on whole simulated classes with late and missing ticks. */
class WhatHeldProperties {
    private static final double ROUNDING = 1e-6;

    @Provide
    Arbitrary<Past> classes() {
        return Arbitraries.longs().between(0, 1_000_000).flatMap(seed -> Arbitraries.of(4, 8, 12)
                .flatMap(seats -> Arbitraries.of(ClassSimulator.Habit.USUAL, ClassSimulator.Habit.GAMMA_BUNCHED)
                        .map(habit -> SimulatedPasts.of(seed, seats, habit)))).filter(p -> !p.candles().isEmpty());
    }

    @Property(tries = 150)
    void the_parts_on_the_way_follow_without_gaps_and_add_up_to_the_whole_evening(@ForAll("classes") Past past) {
        WhatHeld held = WhatHeld.of(past.track(), past.candles()).orElseThrow();
        double at = 0;
        for (WhatHeld.Link link : held.links()) {
            assertThat(link.fromMinutes()).isCloseTo(at, within(ROUNDING));
            at = link.toMinutes();
        }
        assertThat(at).isCloseTo(held.readyMinutes(), within(ROUNDING));
        assertThat(held.readyMinutes()).isCloseTo(past.candles().values().stream()
                .mapToDouble(CandleTime::readyMinutes).max().orElseThrow(), within(ROUNDING));
    }

    @Property(tries = 150)
    void the_network_gives_back_the_recorded_times(@ForAll("classes") Past past) {
        ActivityNetwork<Part> network = ClassNetwork.of(past.track(), past.candles()).network();
        for (SeatTrack seat : past.track().seats()) {
            for (StepTime time : StepTime.of(past.track(), seat)) {
                assertThat(lastStretch(network, seat.seat(), time.step()))
                        .isCloseTo(time.toMinutes(), within(ROUNDING));
            }
        }
    }

    /** When a seat was done with a step: where its last stretch ends. */
    private static double lastStretch(ActivityNetwork<Part> network, int seat, int step) {
        return network.ids().stream().filter(p -> p.kind() == Part.Kind.STEP && p.seat() == seat && p.step() == step)
                .mapToDouble(network::earliestFinish).max().orElseThrow();
    }

    @Property(tries = 150)
    void nothing_held_the_class_for_longer_than_it_was_over_its_plan_on_the_way(@ForAll("classes") Past past) {
        WhatHeld held = WhatHeld.of(past.track(), past.candles()).orElseThrow();
        held.bySteps().forEach((step, minutes) -> assertThat(minutes).isPositive().isLessThanOrEqualTo(ROUNDING
                + over(held, p -> p.step() == step)));
        held.bySeats().forEach((seat, minutes) -> assertThat(minutes).isPositive().isLessThanOrEqualTo(ROUNDING
                + over(held, p -> p.seat() == seat)));
        Statistics.label("a step held the class").collect(!held.bySteps().isEmpty())
                .coverage(c -> c.check(true).percentage(p -> p > 50));
        Statistics.label("a seat held the class").collect(!held.bySeats().isEmpty())
                .coverage(c -> c.check(true).percentage(p -> p > 50));
    }

    private static double over(WhatHeld held, Predicate<Part> which) {
        return held.links().stream().filter(l -> l.part().kind() == Part.Kind.STEP && which.test(l.part()))
                .mapToDouble(WhatHeld.Link::overMinutes).sum();
    }

    @Property(tries = 100)
    void a_candle_may_be_later_by_its_spare_time_and_no_more(@ForAll("classes") Past past) {
        WhatHeld held = WhatHeld.of(past.track(), past.candles()).orElseThrow();
        held.spareMinutes().forEach((seat, spare) -> {
            assertThat(later(past, seat, spare)).isCloseTo(held.readyMinutes(), within(ROUNDING));
            assertThat(later(past, seat, spare + 1)).isCloseTo(held.readyMinutes() + 1, within(ROUNDING));
        });
    }

    private static double later(Past past, int seat, double minutes) {
        Map<Integer, CandleTime> candles = new TreeMap<>(past.candles());
        candles.computeIfPresent(seat, (s, c) -> new CandleTime(c.pouredMinutes(), c.readyMinutes() + minutes));
        return WhatHeld.of(past.track(), candles).orElseThrow().readyMinutes();
    }
}
