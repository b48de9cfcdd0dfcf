package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceStations;
import benchpace.pace.SeatPace;
import benchpace.pace.SeatProgress;
import benchpace.pace.UntickedSeat;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.forecast.Forecast;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A seat that waits its turn is not slow. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TurnsAtAStationTest {
    private static final PaceStations TAP = new PaceStations(1, 3);

    /** Eight seats come to the pour together at minute 15 and pour one after the other, three minutes each. */
    private static Scene atTheTap(int poured) {
        Scene scene = Scene.led(8).served("pour", 1, 3).open(2.5, "wicks").open(7.5, "mix").open(14, "pour");
        for (int seat = 1; seat <= 8; seat++) {
            scene.tap(2 + 0.05 * seat, seat, "vessel").tap(6.5 + 0.1 * seat, seat, "wicks")
                    .tap(12.5 + 0.1 * seat, seat, "mix");
        }
        for (int seat = 1; seat <= poured; seat++) {
            scene.tap(14 + 3 * seat + 0.1, seat, "pour");
        }
        return scene;
    }

    @Test void a_seat_that_waits_its_turn_at_the_one_tap_is_never_called_slow() {
        assertThat(atTheTap(8).history(40)).allSatisfy((seat, levels) ->
                assertThat(levels).as("seat %d", seat).containsOnly(Level.NONE));
    }

    @Test void without_the_station_the_last_in_the_same_class_would_be() {
        Scene blind = Scene.led(8).open(2.5, "wicks").open(7.5, "mix").open(14, "pour");
        for (int seat = 1; seat <= 8; seat++) {
            blind.tap(2 + 0.05 * seat, seat, "vessel").tap(6.5 + 0.1 * seat, seat, "wicks")
                    .tap(12.5 + 0.1 * seat, seat, "mix").tap(14 + 3 * seat + 0.1, seat, "pour");
        }
        assertThat(blind.history(40).get(8)).contains(Level.BEHIND);
    }

    @Test void the_seat_that_keeps_the_tap_is_behind_and_those_behind_it_are_not() {
        Map<Integer, List<Level>> history = atTheTap(3).history(45);

        assertThat(history.get(4)).contains(Level.BEHIND);
        for (int seat : List.of(1, 2, 3, 5, 6, 7, 8)) {
            assertThat(history.get(seat)).as("seat %d", seat).containsOnly(Level.NONE);
        }
    }

    @Test void its_price_counts_those_who_wait_behind_it() {
        SeatPace early = atTheTap(1).seat(32, 2);
        SeatPace last = atTheTap(7).seat(50, 8);

        assertThat(early.level()).isEqualTo(Level.BEHIND);
        assertThat(early.savedMinutes()).isGreaterThan(2);
        assertThat(early.priceMinutes()).isGreaterThanOrEqualTo(3);
        assertThat(last.minutesInStep()).isCloseTo(50 - 35.1, within(0.01));
    }

    @Test void leaving_a_seat_behind_that_waits_counts_those_before_it() {
        Scene scene = Scene.led(6).served("mix", 1, 5).open(2.5, "wicks").open(7.5, "mix");
        for (int seat = 1; seat <= 6; seat++) {
            scene.tap(2 + 0.05 * seat, seat, "vessel").tap(6.5 + 0.1 * seat, seat, "wicks");
        }
        List<UntickedSeat> unticked = scene.beforeOpening(8, "pour");

        assertThat(unticked).extracting(UntickedSeat::seat).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(unticked.get(5).remainingMinutes()).isBetween(24.0, 38.0);
        for (int i = 1; i < 6; i++) {
            assertThat(unticked.get(i).remainingMinutes()).isGreaterThan(unticked.get(i - 1).remainingMinutes() + 3);
        }
    }

    /** Seven seats wait three minutes each; without turns the last pour would be believed four minutes away. */
    @Test void the_forecast_knows_the_queue() {
        double last = atTheTap(1).forecast(17.5).p50() - 60;

        assertThat(last).isBetween(36.0, 42.0);
        assertThat(atTheTap(6).forecast(32.5).p50() - 60).isBetween(36.0, 41.0);
    }

    // ---- invented classes

    static ClassTrack invented(int seats, ClassSimulator.Habit habit, PaceStations stations, long seed) {
        return track(ClassSimulator.simulate("c", seats, habit, stations, seed));
    }

    private static ClassTrack track(ClassSimulator.Simulated made) {
        try {
            ClassLog log = ClassLogReader.read("c", new StringReader(String.join("\n", made.lines())));
            TrackFold fold = new TrackFold(log);
            log.events().forEach(fold::apply);
            return fold.track();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Told whoever is flagged, half minute by half minute. */
    interface Watcher {
        void flagged(int seat, Level level, double now, ClassTrack track);
    }

    static void play(ClassTrack whole, double end, Watcher watcher) {
        PaceEngine engine = new PaceEngine(PacePriors.standard());
        PaceMemory memory = PaceMemory.EMPTY;
        for (double now = 0; now < end; now += PaceEngine.TICK_MINUTES) {
            ClassTrack track = whole.asOf(now);
            memory = engine.remember(track, now, memory);
            double at = now;
            engine.levels(track, now, memory).forEach((seat, level) -> {
                if (level != Level.NONE) {
                    watcher.flagged(seat, level, at, track);
                }
            });
        }
    }

    /** Eight seats, one tap, three minutes each, ticked at once and nobody stuck: the table stays quiet. */
    @Test void a_class_that_pours_one_by_one_has_no_false_alarm() {
        ClassSimulator.Habit calm = new ClassSimulator.Habit(false, 1, 1, 3, 1, 0);
        for (long seed = 0; seed < 20; seed++) {
            List<Integer> behind = new ArrayList<>();
            play(invented(8, calm, TAP, seed), 75, (seat, level, now, track) -> {
                if (level == Level.BEHIND && now > 12 && atThePour(track, seat, now)) {
                    behind.add(seat);
                }
            });
            assertThat(behind).as("class %d", seed).isEmpty();
        }
    }

    private static boolean atThePour(ClassTrack track, int seat, double now) {
        return SeatProgress.of(track, track.seats().get(seat - 1), now).step() == track.pourStep();
    }

    /** The same seat stuck at the same moment: where all are served at once, and at two taps. */
    @Test void a_seat_stuck_at_its_station_is_called_as_soon_as_without_stations() {
        Double[] called = new Double[2];
        for (int taps : new int[] {8, 2}) {
            Scene scene = Scene.led(8).served("pour", taps, 3).open(2.5, "wicks").open(7.5, "mix").open(14, "pour");
            for (int seat = 1; seat <= 8; seat++) {
                scene.tap(2 + 0.05 * seat, seat, "vessel").tap(6.5 + 0.1 * seat, seat, "wicks")
                        .tap(12.5 + 0.1 * seat, seat, "mix");
            }
            for (int seat = 2; seat <= 8; seat++) {
                scene.tap(taps == 8 ? 17 + 0.1 * seat : 14 + 3 * (seat - 1), seat, "pour");
            }
            List<Level> levels = scene.history(40).get(1);
            called[taps == 8 ? 0 : 1] = levels.indexOf(Level.BEHIND) * PaceEngine.TICK_MINUTES;
        }
        assertThat(called[0]).isPositive();
        assertThat(called[1]).isBetween(1.0, called[0] + 1.5);
    }

    /** 40 classes with stalls and late ticks, forecast at minutes 10 to 50. */
    @Test void four_in_five_classes_end_inside_the_range_forecast_for_them() {
        int inside = 0;
        int all = 0;
        PaceEngine engine = new PaceEngine(PacePriors.standard());
        for (long seed = 0; seed < 40; seed++) {
            ClassSimulator.Habit habit = seed % 2 == 0 ? ClassSimulator.Habit.PROMPT : ClassSimulator.Habit.USUAL;
            ClassSimulator.Simulated made = ClassSimulator.simulate("c", 8, habit,
                    new PaceStations(1 + (int) (seed % 3), 3), 300 + seed);
            ClassTrack whole = track(made);
            for (double now = 10; now <= 50; now += 10) {
                Forecast forecast = engine.forecast(whole.asOf(now), now);
                double end = made.truth().finish() / 60;
                inside += forecast.p10() <= end && end <= forecast.p90() ? 1 : 0;
                all++;
            }
        }
        assertThat(inside / (double) all).isBetween(0.68, 0.92);
    }
}
