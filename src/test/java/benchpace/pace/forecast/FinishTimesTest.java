package benchpace.pace.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.ClassSimulator;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.Scene;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The odds that a class is over later than a moment. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FinishTimesTest {
    private static final int CLASSES = 120;

    @Test
    void the_odds_of_being_later_are_the_share_of_moments_after_it() {
        FinishTimes times = FinishTimes.of(new double[] {80, 70, 90, 80});

        assertThat(times.laterThan(69)).isEqualTo(1);
        assertThat(times.laterThan(70)).isEqualTo(0.75);
        assertThat(times.laterThan(80)).as("exactly then is not later").isEqualTo(0.25);
        assertThat(times.laterThan(85)).isEqualTo(0.25);
        assertThat(times.laterThan(90)).isZero();
    }

    @Test
    void odds_and_quantiles_are_read_from_the_same_moments() {
        Forecast forecast = Scene.led(6).forecast(0);

        assertThat(forecast.times().laterThan(forecast.p10())).isCloseTo(0.9, within(0.002));
        assertThat(forecast.times().laterThan(forecast.p50())).isCloseTo(0.5, within(0.002));
        assertThat(forecast.times().laterThan(forecast.p90())).isCloseTo(0.1, within(0.002));
    }

    @Test
    void moments_out_of_order_or_none_at_all_are_a_mistake() {
        assertThatThrownBy(() -> new FinishTimes(List.of(2.0, 1.0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FinishTimes(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    /** Said and seen over many classes differ by no more than chance: three standard errors of so many tosses. */
    @Test
    void of_the_classes_said_to_be_later_so_many_are() throws Exception {
        for (double minute : new double[] {0.5, 20, 45}) {
            for (double moment : new double[] {85, 90, 95, 100}) {
                double said = 0;
                double variance = 0;
                int seen = 0;
                for (Told told : classes(minute)) {
                    double odds = told.times().laterThan(moment);
                    said += odds;
                    variance += odds * (1 - odds);
                    seen += told.finishMinutes() > moment ? 1 : 0;
                }
                assertThat((double) seen).as("later than %s, asked at %s", moment, minute)
                        .isCloseTo(said, within(3 * Math.sqrt(variance)));
            }
        }
    }

    private record Told(FinishTimes times, double finishMinutes) { }

    /** What is said at that minute of classes whose truth is known. */
    private static List<Told> classes(double minute) throws Exception {
        List<Told> classes = new ArrayList<>();
        PaceEngine engine = new PaceEngine(PacePriors.standard());
        for (int j = 0; j < CLASSES; j++) {
            ClassSimulator.Simulated made = ClassSimulator.simulate("c", 6, ClassSimulator.Habit.USUAL, 7000 + j);
            ClassLog log = ClassLogReader.read("c", new StringReader(String.join("\n", made.lines())));
            TrackFold fold = new TrackFold(log);
            log.events().stream().filter(e -> e.seconds() <= 60 * minute).forEach(fold::apply);
            classes.add(new Told(engine.forecast(fold.track(), minute).times(), made.truth().finish() / 60));
        }
        return classes;
    }
}
