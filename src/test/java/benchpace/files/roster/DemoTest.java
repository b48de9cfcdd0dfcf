package benchpace.files.roster;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The class that the board opens with, and the two beside it, are whole: each could be taught as it stands. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DemoTest {

    @Test void they_are_written_for_eight_six_and_twenty_four_seats() {
        assertThat(Demo.plans()).extracting(Plan::usualSeats).containsExactly(8, 6, 24);
    }

    @Test void a_class_takes_one_and_a_half_to_two_hours_and_its_wait_about_one() {
        assertThat(Demo.plans()).allSatisfy(plan -> {
            assertThat(plan.planned()).isBetween(Duration.ofMinutes(90), Duration.ofMinutes(120));
            assertThat(plan.cure().orElseThrow().planned()).isBetween(Duration.ofMinutes(50), Duration.ofMinutes(65));
        });
    }

    @Test void every_step_has_something_to_say_and_something_to_read() {
        assertThat(Demo.plans()).flatExtracting(Plan::steps).allSatisfy(step -> {
            assertThat(step.say()).as(step.name()).isNotBlank();
            assertThat(step.wall()).as(step.name()).isNotBlank();
        });
    }

    @Test void what_can_hurt_carries_a_caution() {
        List<StepKind> hot = List.of(StepKind.POUR, StepKind.CURE);
        assertThat(Demo.plans()).flatExtracting(Plan::steps)
                .filteredOn(s -> hot.contains(s.kind()) || s.id().value().matches("mix|fragrance|blend|trim"))
                .extracting(Step::caution).doesNotContain("");
    }

    @Test void the_wait_has_every_kind_of_activity_and_the_longer_crafts_fit_into_it() {
        assertThat(Demo.plans()).allSatisfy(plan -> {
            assertThat(plan.activities()).extracting(Activity::kind)
                    .containsExactlyInAnyOrder(ActivityKind.values());
            assertThat(plan.activities()).extracting(Activity::longest)
                    .allMatch(longest -> longest.compareTo(plan.cure().orElseThrow().planned()) < 0);
        });
    }

    @Test void the_evening_roster_fits_its_plan_and_leaves_some_names_out() {
        Roster roster = Demo.eveningRoster();

        assertThat(roster.problems()).isEmpty();
        assertThat(roster.places()).hasSize(Demo.eveningPlan().usualSeats())
                .anyMatch(p -> p.name().isEmpty()).anyMatch(p -> !p.name().isEmpty());
    }

    @Test void an_evening_of_it_is_recorded_from_its_setting_up_on() {
        List<Recorded> evening = Demo.recordedEvening();

        assertThat(evening).extracting(Recorded::commandId).first().isEqualTo("recorded.1");
        assertThat(LiveClass.of(evening).setup().seats()).isEqualTo(Demo.eveningRoster().places());
    }
}
