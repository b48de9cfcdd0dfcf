package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.Plan;
import benchpace.plan.StepId;
import benchpace.plan.TestPlans;
import benchpace.prep.evening.Chance;
import benchpace.prep.evening.Change;
import benchpace.prep.evening.CureBasis;
import benchpace.prep.evening.Effect;
import benchpace.prep.evening.Quantiles;
import benchpace.prep.evening.StepEnd;
import benchpace.prep.evening.Timetable;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EveningWordsTest {
    private static final Plan PLAN = TestPlans.evening();
    private static final Timetable TIMETABLE = new Timetable(2000, 120, new Chance(0.72, 0.01), List.of(),
            new Quantiles(89.2, 116.4, 152.6), Optional.of(new Quantiles(71, 94, 125)), CureBasis.COMPUTED);

    private static Effect effect(double minutes, double share, double gained) {
        return new Effect(new Change.Longer(15), minutes, minutes, new Chance(share, 0.01), gained, 0.005);
    }

    @Test void the_odds_come_with_how_sure_they_are() {
        assertThat(EveningWords.onTime(TIMETABLE)).isEqualTo("Done within 2 h: 72 in 100, give or take 1.");
        assertThat(EveningWords.done(TIMETABLE)).isEqualTo(
                "Likely done after 1 h 56 min; one evening in ten by 1 h 29 min, nine in ten by 2 h 33 min.");
        assertThat(EveningWords.lastCandle(TIMETABLE)).startsWith("The last candle is likely ready after 1 h 34 min;");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"0; 0; less than 1 in 100", "1; 0; more than 99 in 100",
        "0.5; 0.004; 50 in 100, give or take less than 1", "0.994; 0.011; 99 in 100, give or take 1"})
    void nothing_simulated_is_said_to_be_sure(double share, double error, String said) {
        assertThat(EveningWords.chance(new Chance(share, error))).isEqualTo(said);
    }

    @Test void it_is_said_what_the_odds_rest_on_and_what_done_means() {
        assertThat(EveningWords.basis(TIMETABLE, PLAN)).isEqualTo("Counted on 2,000 made-up evenings at this plan's "
                + "pace, each candle's cure computed from its vessel and wax. Done means: every seat is through with "
                + "all steps and every candle is ready.");
    }

    @Test void a_change_says_what_it_is_and_what_was_assumed() {
        List<Change> changes = List.of(new Change.FewerSeats(2), new Change.MoreHelp(20, 10),
                new Change.Led(new StepId("blend")), new Change.Free(new StepId("wicks")),
                new Change.Beforehand(new StepId("wicks")), new Change.OtherCandle(TestPlans.CANDLE),
                new Change.SmallerVessels(0.75), new Change.CoolerPour(5), new Change.Longer(15));

        assertThat(changes).extracting(c -> EveningWords.change(c, PLAN)).containsExactly("Two seats fewer",
                "One helper more", "\"Step blend\" led instead of free", "\"Step wicks\" free instead of led",
                "\"Step wicks\" done before the guests come", "Everyone makes \"Candle small-glass\"",
                "Vessels 25 % smaller", "Poured 5 °C cooler", "15 minutes more promised");
        assertThat(changes.subList(0, 8)).allSatisfy(c -> assertThat(EveningWords.assumed(c)).endsWith("."));
        assertThat(EveningWords.assumed(changes.get(1))).contains("after 10 minutes on average, not 20");
    }

    @Test void what_a_change_does_is_said_in_minutes_and_chance() {
        assertThat(EveningWords.effect(effect(8.7, 0.81, 0.09))).isEqualTo(
                "saves 9 min, on time 81 in 100, give or take 1");
        assertThat(EveningWords.effect(effect(0, 0.81, 0.09))).isEqualTo("on time 81 in 100, give or take 1");
        assertThat(EveningWords.effect(effect(-3, 0.69, -0.03))).isEqualTo(
                "costs 3 min, on time 69 in 100, give or take 1");
        assertThat(EveningWords.effect(effect(0.2, 0.72, 0))).isEqualTo("changes next to nothing");
    }

    @Test void a_wait_for_a_turn_is_told_where_there_is_one() {
        StepEnd without = new StepEnd(new StepId("pour"), new Quantiles(1, 2, 3), Optional.empty());

        assertThat(EveningWords.longestWait(without, PLAN)).isEmpty();
        assertThat(EveningWords.longestWait(new StepEnd(new StepId("pour"), new Quantiles(1, 2, 3),
                Optional.of(new Quantiles(0, 0.4, 1))), PLAN)).isEmpty();
    }
}
