package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.AsTyped;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Events of which nobody can be told any more, and which still fold to the same class. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NamelessTest {
    private static final String MARK = WordyClass.MARK;

    @Test
    void no_word_that_anybody_wrote_is_left() {
        List<Recorded> log = WordyClass.tapped(WordyClass.wordy().log());
        assertThat(log.toString()).contains(MARK);

        List<Recorded> nameless = Nameless.ofEverybody().all(log);

        assertThat(nameless.toString().toLowerCase(Locale.ROOT)).doesNotContain(MARK);
        assertThat(nameless.get(1).by()).isEqualTo("instructor");
        assertThat(nameless.get(2).by()).isEqualTo("helper 1");
    }

    @Test
    void a_plan_keeps_its_figures_and_what_belongs_to_what() {
        Plan plan = LiveClass.of(Nameless.ofEverybody().all(WordyClass.wordy().log())).plan();

        assertThat(plan.steps()).extracting(Step::planned).containsOnly(Duration.ofMinutes(6));
        assertThat(plan.candles().get(0).asTyped()).as("as it was typed").isEqualTo(AsTyped.NONE);
        assertThat(plan.promised()).isEqualTo(Duration.ofMinutes(150));
        assertThat(plan.kit().melters().get(0).wax()).isEqualTo(plan.candles().get(0).wax().id())
                .isEqualTo(plan.kit().supplies().get(0).id()).isNotEqualTo(plan.kit().supplies().get(1).id());
        assertThat(plan.kit().appliances().get(0).melter()).contains(plan.kit().melters().get(0).id());
        assertThat(plan.kit().appliances().get(0).circuit()).contains(plan.kit().circuits().get(0).id());
    }

    @Test
    void the_guests_alone_are_taken_out_of_a_class_that_keeps_its_plan_and_its_helpers() {
        LiveClass before = WordyClass.wordy();

        List<Recorded> log = Nameless.ofGuests().all(before.log());
        LiveClass live = LiveClass.of(log);

        assertThat(live.plan()).isEqualTo(before.plan());
        assertThat(live.setup().name()).isEqualTo(before.setup().name());
        assertThat(live.seats()).extracting(Seat::name).containsOnly("");
        assertThat(live.seats()).extracting(Seat::party).containsOnly("");
        assertThat(live.seats()).extracting(Seat::mind).containsOnly("");
        assertThat(live.notes()).extracting(Seat.Note::text).containsOnly("…");
        assertThat(log.stream().map(Recorded::event).filter(e -> !(e instanceof ClassEvent.ClassCreated)
                && !(e instanceof ClassEvent.ClassSetUpAgain)).filter(e -> e.toString().contains("Eve")
                || e.toString().contains("Di ") || e.toString().contains("draught"))).isEmpty();
    }
}
