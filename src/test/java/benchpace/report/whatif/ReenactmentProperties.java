package benchpace.report.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.pace.engine.ClassSimulator.Habit;
import benchpace.report.CandleTime;
import benchpace.report.SimulatedPasts;
import benchpace.report.SimulatedPasts.Past;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A whole simulated class gone through once more, with ticks late, missing and swept, guests late, away and gone. */
class ReenactmentProperties {
    private static final double ROUNDING = 1e-6;

    @Provide
    Arbitrary<Past> classes() {
        return Arbitraries.longs().between(0, 1_000_000).flatMap(seed -> Arbitraries.of(4, 8, 12)
                .flatMap(seats -> Arbitraries.of(Habit.USUAL, Habit.GAMMA_BUNCHED)
                        .map(habit -> SimulatedPasts.of(seed, seats, habit)))).filter(p -> !p.candles().isEmpty());
    }

    private static Reenactment.Played played(Past past, Otherwise other) {
        return new Reenactment(past.track(), TickedTimes.of(past.track()), past.candles()).played(other);
    }

    private static Otherwise nothing(ClassTrack track) {
        return new Otherwise(track.seats().size(), track.pourStep() + 1);
    }

    @Property(tries = 200)
    void gives_back_every_tick_opening_and_candle(@ForAll("classes") Past past) {
        ClassTrack track = past.track();
        Reenactment.Played played = played(past, nothing(track));
        for (int k = 0; k <= track.pourStep(); k++) {
            double opened = track.openedMinutes().get(k);
            if (track.steps().get(k).led() && opened < SeatTrack.NOT_YET) {
                assertThat(played.opened()[k]).as("opening of step " + k).isCloseTo(opened, within(ROUNDING));
            }
        }
        for (int i = 0; i < track.seats().size(); i++) {
            for (StepTime time : StepTime.of(track, track.seats().get(i))) {
                if (time.ticked()) {
                    assertThat(played.done()[i][time.step()]).as("seat " + (i + 1) + " at step " + time.step())
                            .isCloseTo(time.toMinutes(), within(ROUNDING));
                }
            }
        }
        List<Double> ready = new ArrayList<>(new TreeMap<>(past.candles()).values().stream()
                .map(CandleTime::readyMinutes).toList());
        for (int c = 0; c < ready.size(); c++) {
            assertThat(played.ready()[c]).isCloseTo(ready.get(c), within(ROUNDING));
        }
    }

    @Property(tries = 200)
    void nothing_that_only_takes_time_away_makes_a_candle_later(@ForAll("classes") Past past,
                                                                @ForAll("steps") int step) {
        ClassTrack track = past.track();
        double was = played(past, nothing(track)).lastReady();
        Otherwise left = nothing(track);
        left.left[step] = true;
        assertThat(played(past, left).lastReady()).isLessThanOrEqualTo(was + ROUNDING);
        Otherwise sooner = nothing(track);
        sooner.sooner[step] = 2;
        assertThat(played(past, sooner).lastReady()).isLessThanOrEqualTo(was + ROUNDING);
        Otherwise quicker = nothing(track);
        for (double[] less : quicker.less) {
            less[step] = 1.5;
        }
        assertThat(played(past, quicker).lastReady()).isLessThanOrEqualTo(was + ROUNDING);
    }

    @Provide
    Arbitrary<Integer> steps() {
        return Arbitraries.of(0, 1, 2, 3);
    }

    @Property(tries = 50)
    void a_candle_that_waits_for_nothing_else_saves_just_what_it_took_less(@ForAll("classes") Past past) {
        Otherwise other = nothing(past.track());
        Arrays.fill(other.cureShare, 0.8);
        Map<Integer, CandleTime> candles = new TreeMap<>(past.candles());
        double least = candles.values().stream()
                .mapToDouble(c -> c.pouredMinutes() + 0.8 * (c.readyMinutes() - c.pouredMinutes())).max().orElseThrow();
        assertThat(played(past, other).lastReady()).isCloseTo(least, within(ROUNDING));
    }
}
