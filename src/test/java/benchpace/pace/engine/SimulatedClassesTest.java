package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.ReplayCommand;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepPrior;
import benchpace.pace.belief.PacePriors;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented classes of other habits than the recorded ones: gamma times, bunched taps, plans wrong by an eighth. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SimulatedClassesTest {
    @TempDir
    private Path folder;

    private ReplayScore replay(ClassSimulator.Habit habit, int classes, long seed) throws Exception {
        List<String> logs = new ArrayList<>();
        List<ClassSimulator.Truth> truths = new ArrayList<>();
        for (int j = 0; j < classes; j++) {
            ClassSimulator.Simulated made = ClassSimulator.simulate("c" + j, j % 2 == 0 ? 6 : 12, habit, seed + j);
            Path file = folder.resolve("c" + j + ".jsonl");
            Files.write(file, made.lines());
            logs.add(file.toString());
            truths.add(made.truth());
        }
        StringBuilder flags = new StringBuilder();
        Path forecasts = folder.resolve("G.csv");
        int code = new ReplayCommand().run(logs, "-", forecasts.toString(), Optional.empty(),
                InputStream.nullInputStream(), flags, new StringBuilder());
        assertThat(code).isZero();
        ReplayScore score = new ReplayScore(flags.toString(), Files.readString(forecasts));
        truths.forEach(score::add);
        return score;
    }

    @Test
    void with_prompt_taps_most_stalls_are_found_quickly() throws Exception {
        ReplayScore score = replay(ClassSimulator.Habit.PROMPT, 40, 500);
        assertThat(score.shareMissed()).isLessThan(0.42);
        assertThat(score.medianToBehind()).isLessThan(9);
        assertThat(score.falseBehindPerClass()).isLessThan(0.6);
    }

    @Test
    void other_habits_of_time_and_tapping_do_not_bring_a_flood_of_alarms() throws Exception {
        for (ClassSimulator.Habit habit : List.of(ClassSimulator.Habit.GAMMA, ClassSimulator.Habit.BUNCHED,
                ClassSimulator.Habit.GAMMA_BUNCHED)) {
            ReplayScore score = replay(habit, 30, 900);
            assertThat(score.falseBehindPerClass()).as("%s", habit).isLessThan(0.9);
            assertThat(score.flagsPerClass()).as("%s", habit).isLessThan(4.5);
            assertThat(score.coverage()).as("%s", habit).isBetween(0.62, 0.95);
            assertThat(score.pinballMinutes()).as("%s", habit).isLessThan(2.5);
        }
    }

    /**
     * Little (1961), "A proof for the queuing formula L = lambda W", <i>Operations Research</i> 9, 383-387: over a
     * whole class, seats present at a step, summed over time, are the times the seats spend there, summed over seats.
     */
    @Test
    void seats_at_a_step_over_time_are_times_at_the_step_over_seats() throws Exception {
        ClassTrack whole = simulated(3, ClassSimulator.Habit.PROMPT);
        double end = 60;
        double dt = 0.01;
        for (int k = 0; k <= whole.pourStep(); k++) {
            double seatMinutes = 0;
            double spent = 0;
            for (double now = dt / 2; now < end; now += dt) {
                ClassTrack then = whole.asOf(now);
                for (SeatTrack seat : then.seats()) {
                    SeatProgress at = SeatProgress.of(then, seat, now);
                    seatMinutes += at.standing() == SeatProgress.Standing.WORKING && at.step() == k ? dt : 0;
                }
            }
            for (SeatTrack seat : whole.seats()) {
                for (SeatProgress.Done done : SeatProgress.of(whole, seat, end).done()) {
                    spent += done.step() == k ? done.minutes() : 0;
                }
            }
            assertThat(seatMinutes).isCloseTo(spent, within(0.02 * whole.seats().size()));
        }
    }

    private static ClassTrack simulated(long seed, ClassSimulator.Habit habit) throws Exception {
        ClassLog log = ClassLogReader.read("c", new StringReader(String.join("\n",
                ClassSimulator.simulate("c", 4, habit, seed).lines())));
        TrackFold fold = new TrackFold(log);
        log.events().forEach(fold::apply);
        return fold.track();
    }

    @Test
    void past_classes_teach_that_the_plan_is_wrong_and_by_how_much() throws Exception {
        ClassSimulator.Habit slow = new ClassSimulator.Habit(false, 1.4, 0.9, 2, 0.9, 0.01);
        List<ClassTrack> past = new ArrayList<>();
        for (long seed = 0; seed < 12; seed++) {
            past.add(simulated(seed, slow));
        }
        Map<String, StepPrior> learned = LearnedSteps.learn(past, PacePriors.standard());
        assertThat(learned).containsOnlyKeys("vessel", "fragrance", "wicks", "mix", "pour");
        double mean = learned.values().stream().mapToDouble(StepPrior::meanLogShift).average().orElseThrow();
        assertThat(mean).isCloseTo(Math.log(1.4), within(0.12));
        assertThat(learned.values()).allSatisfy(p -> {
            assertThat(p.variance()).isLessThan(PacePriors.standard().times().stepVariance() * 2);
            assertThat(Math.sqrt(p.noiseVariance())).isBetween(0.2, 0.6);
        });
        assertThat(LearnedSteps.learn(List.of(), PacePriors.standard())).isEmpty();
    }
}
