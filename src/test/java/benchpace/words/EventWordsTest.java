package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.ClassEvent;
import benchpace.live.TestClass;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What an event was, as the undo button and a seat's history say it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventWordsTest {
    private static final Plan PLAN = TestClass.evening(2).live().plan();
    private static final SeatNumber SEAT_4 = new SeatNumber(4);

    @Test void a_tap_is_told_by_the_name_of_its_step() {
        StepId wicks = new StepId("wicks");
        String name = PLAN.step(wicks).orElseThrow().name();

        assertThat(EventWords.of(PLAN, new ClassEvent.StepFinished(SEAT_4, wicks)))
                .isEqualTo("seat 4 done with " + name);
        assertThat(EventWords.of(PLAN, new ClassEvent.StepOpened(wicks))).isEqualTo("opened " + name);
    }

    @Test void what_the_plan_does_not_name_is_told_by_its_id() {
        assertThat(EventWords.of(PLAN, new ClassEvent.StepOpened(new StepId("unheard-of"))))
                .isEqualTo("opened unheard-of");
    }

    @Test void help_is_told_with_who_gave_it() {
        assertThat(EventWords.of(PLAN, new ClassEvent.HelpSorted(SEAT_4, "MO"))).isEqualTo("MO sorted seat 4");
    }
}
