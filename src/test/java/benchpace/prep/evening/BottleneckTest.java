package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.TestPlans;
import benchpace.words.EveningWords;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Forty poured one by one. The figures are common practice and arithmetic, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BottleneckTest {
    /** Two hours, of which the other steps take one and a half: half an hour for the pour. */
    private static final double PROMISED = 120;

    private static Plan plan(double each, int atOnce) {
        Duration planned = Duration.ofMillis(Math.round(each * 60_000));
        Step pour = new Step(new StepId("pour"), "Pour", StepKind.POUR, Opening.LED, planned, Duration.ofMinutes(3), "",
                "", "", Optional.empty(), Optional.of(new Stations(atOnce, "melter tap", planned)));
        return new Plan(new PlanId("forty"), "Forty", "", "", 40, TableShape.ROWS, List.of(
                TestPlans.step("welcome", StepKind.TALK, Opening.LED, 10),
                TestPlans.step("scent", StepKind.HANDS_ON, Opening.LED, 15), pour,
                TestPlans.step("label", StepKind.HANDS_ON, Opening.FREE, 5),
                TestPlans.step("cure", StepKind.CURE, Opening.FREE, 60)), List.of());
    }

    @Test void forty_poured_one_by_one_cannot_be_done_in_two_hours() {
        Bottleneck pour = Bottleneck.of(plan(25 / 6.0, 1), 40, PROMISED).get(0);

        assertThat(pour.turns().toSeconds()).isEqualTo(10_000);
        assertThat(pour.left()).isEqualTo(Duration.ofMinutes(30));
        assertThat(pour.stationsNeeded()).hasValue(6);
        assertThat(pour.seatsServed()).isEqualTo(7);
        assertThat(pour.promiseNeeded().toSeconds()).isEqualTo(90 * 60 + 10_000);
    }

    @Test void at_five_minutes_each_it_takes_seven_stations() {
        assertThat(Bottleneck.of(plan(5, 6), 40, PROMISED).get(0).stationsNeeded()).hasValue(7);
        assertThat(Bottleneck.of(plan(5, 7), 40, PROMISED)).isEmpty();
    }

    @Test void six_seats_are_poured_one_by_one_in_time() {
        assertThat(Bottleneck.of(plan(25 / 6.0, 1), 6, PROMISED)).isEmpty();
    }

    /** What is left for the turns is what the promise holds beyond a class of one. */
    @Test void a_promise_that_is_long_enough_is_no_longer_than_needed() {
        Plan plan = plan(5, 1);
        double needed = Bottleneck.of(plan, 40, PROMISED).get(0).promiseNeeded().toSeconds() / 60.0;

        assertThat(Bottleneck.of(plan, 40, needed)).isEmpty();
        assertThat(Bottleneck.of(plan, 40, needed - 0.1)).hasSize(1);
    }

    @Test void where_the_other_steps_take_all_no_number_of_stations_helps() {
        Bottleneck pour = Bottleneck.of(plan(5, 1), 40, 80).get(0);

        assertThat(pour.left()).isEqualTo(Duration.ZERO);
        assertThat(pour.stationsNeeded()).isEmpty();
        assertThat(pour.seatsServed()).isZero();
    }

    @Test void the_plan_is_told_what_is_wrong_and_what_would_do() {
        Plan plan = plan(25 / 6.0, 1);

        assertThat(EveningWords.bottleneck(Bottleneck.of(plan, 40, PROMISED).get(0), plan)).containsExactly(
                "\"Pour\" cannot be done in time: 40 seats, one at a time (melter tap), take 2 h 47 min, and the other "
                        + "steps leave 30 min for it.",
                "What would do: 6 at a time, or no more than 7 seats, or a promise of 4 h 17 min or more.");
        assertThat(EveningWords.bottleneck(Bottleneck.of(plan, 40, 80).get(0), plan).get(1))
                .isEqualTo("What would do: a promise of 4 h 17 min or more.");
    }

    /** The simulated evenings of such a class are as late as the arithmetic says. */
    @Test void no_evening_of_it_is_on_time() {
        assertThat(Evenings.of(Setting.of(plan(25 / 6.0, 1), 40).withPromisedMinutes(PROMISED), 1).timetable().onTime()
                .share()).isZero();
    }
}
