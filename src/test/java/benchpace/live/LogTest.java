package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LogTest {
    private final TestClass c = TestClass.evening(2).open("welcome").open("wicks").finish(1, "wicks");

    @Test void a_log_begins_with_the_creation() {
        List<Recorded> beheaded = c.live().history().subList(1, 4);

        assertThatThrownBy(() -> LiveClass.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LiveClass.of(beheaded)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test void a_log_with_a_hole_in_it_is_not_a_class() {
        List<Recorded> torn = new ArrayList<>(c.live().history());
        torn.remove(2);

        assertThatThrownBy(() -> LiveClass.of(torn)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("event 4");
    }

    @Test void an_event_follows_the_last_one() {
        Recorded last = c.live().history().get(3);

        assertThatThrownBy(() -> c.live().apply(last)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test void the_same_events_make_the_same_class() {
        assertThat(Digest.of(LiveClass.of(c.live().history()))).isEqualTo(Digest.of(c.live()));
    }

    @Test void finished_steps_are_listed_in_the_order_they_were_told() {
        c.finish(2, "blend").finish(2, "wicks").open("pour").finish(2, "pour");

        assertThat(c.seat(2).finishes().keySet()).extracting(Object::toString)
                .containsExactly("blend", "wicks", "pour");
    }

    @Test void nothing_of_a_class_can_be_changed_from_outside() {
        assertThatThrownBy(() -> c.live().history().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> c.live().seats().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> c.seat(1).finishes().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> c.seat(1).stints().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @Test void a_class_has_seats_and_each_only_once() {
        ClassEvent.Place one = new ClassEvent.Place(new SeatNumber(1), "");

        assertThatThrownBy(() -> new ClassEvent.ClassCreated(TestPlans.evening(), "x", TestClass.START, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                () -> new ClassEvent.ClassCreated(TestPlans.evening(), "x", TestClass.START, List.of(one, one)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("seat 1");
    }

    @Test void a_command_has_an_id_of_sensible_form() {
        ClassEvent wish = new ClassEvent.ClassClosed();

        for (String id : List.of("", "   ", "x".repeat(65), "a\nb")) {
            assertThatThrownBy(() -> new Command(id, "test", TestClass.START, wish))
                    .as("id \"%s\"", id).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(new Command("x".repeat(64), "test", TestClass.START, wish).id()).hasSize(64);
    }
}
