package benchpace.pace.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.PaceStep;
import benchpace.pace.StepPrior;
import benchpace.pace.WorkKind;
import benchpace.pace.engine.ClassSimulator;
import benchpace.pace.engine.PaceCalibration;
import benchpace.pace.engine.ReplayScore;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** False alarms stay within what was promised, by seeded classes of several habits, with past classes and without. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AlarmBudgetTest {
    private static final List<ClassSimulator.Habit> HABITS = List.of(ClassSimulator.Habit.USUAL,
            ClassSimulator.Habit.GAMMA, ClassSimulator.Habit.BUNCHED, ClassSimulator.Habit.GAMMA_BUNCHED,
            ClassSimulator.Habit.LATE);

    private static ReplayScore score(int seats, List<ClassSimulator.Habit> habits, double off, boolean history,
                                     int classes) throws Exception {
        List<PaceCalibration.Played> all = new ArrayList<>();
        for (ClassSimulator.Habit habit : habits) {
            all.addAll(PaceCalibration.play(new PaceCalibration.Kind(seats, habit, off, history), classes,
                    1000 * (1 + habits.indexOf(habit)), false));
        }
        return PaceCalibration.score(all, AlarmBudget.STANDARD);
    }

    @Test
    void a_table_of_six_is_told_wrongly_at_most_once_in_four_classes() throws Exception {
        assertThat(score(6, HABITS, 0, false, 30).falseBehindPerClass()).isLessThanOrEqualTo(0.25);
    }

    @Test
    void a_table_of_twelve_is_told_wrongly_at_most_three_times_in_five_classes() throws Exception {
        assertThat(score(12, HABITS.subList(0, 2), 0, false, 20).falseBehindPerClass()).isLessThanOrEqualTo(0.6);
    }

    @Test
    void history_raises_no_more_false_alarms_and_finds_stalls_no_later() throws Exception {
        for (double off : new double[] {0, 0.4}) {
            ReplayScore without = score(8, HABITS.subList(0, 3), off, false, 20);
            ReplayScore with = score(8, HABITS.subList(0, 3), off, true, 20);
            assertThat(with.falseBehindPerClass()).as("steps off by %s", off)
                    .isLessThanOrEqualTo(1.1 * without.falseBehindPerClass() + 1e-9);
            assertThat(with.shareMissed()).as("steps off by %s", off)
                    .isLessThanOrEqualTo(without.shareMissed() + 0.06);
        }
    }

    @Test
    void narrower_beliefs_ask_for_more_certainty_and_so_do_tables_where_a_false_alarm_weighs_more() {
        AlarmBudget budget = AlarmBudget.STANDARD;
        assertThat(budget.at(6, 0.9).behindStalled()).isGreaterThan(budget.at(6, 1).behindStalled());
        assertThat(budget.at(6, 1).behindStalled()).isGreaterThan(budget.at(12, 1).behindStalled());
        assertThat(budget.at(4, 1)).isEqualTo(budget.at(6, 1));
        assertThat(budget.at(40, 1).behindStalled()).isGreaterThan(budget.at(24, 1).behindStalled());
        for (int n = 1; n <= 60; n++) {
            PacePriors.Rule rule = budget.at(n, 1);
            assertThat(rule.slippingStalled()).isLessThanOrEqualTo(rule.behindStalled());
        }
    }

    /** What was accepted before spreads had a floor is still stored, and must not make the board jumpy either. */
    @Test
    void no_past_class_makes_a_single_guests_time_more_certain_than_taps_can_tell() {
        PaceStep wicks = new PaceStep("wicks", 4, false, WorkKind.HANDS_ON);
        PacePriors plain = PacePriors.standard();
        PacePriors narrow = plain.withSteps(Map.of("wicks", new StepPrior(0.2, 0.012, 0.04)));
        assertThat(narrow.noiseVariance(wicks)).isEqualTo(plain.noiseVariance(wicks));
        PacePriors wide = plain.withSteps(Map.of("wicks", new StepPrior(0.2, 0.012, 0.3)));
        assertThat(wide.noiseVariance(wicks)).isCloseTo(0.3, within(1e-12));
    }
}
