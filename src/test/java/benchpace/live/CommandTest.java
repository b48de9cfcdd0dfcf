package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What is asked of a class, by whom and when; and which instants can be at all. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CommandTest {
    private static final ClassEvent NOTE = new ClassEvent.ClassNoted("hello");
    private static final Command TAPPED = new Command("c1", "instructor", TestClass.START, NOTE);

    @Test void a_command_is_of_no_device_until_one_is_named_and_may_be_made_at_another_time() {
        assertThat(TAPPED.device()).isEmpty();
        assertThat(TAPPED.on("tablet")).isEqualTo(new Command("c1", "instructor", "tablet", TestClass.START, NOTE));
        Instant before = TestClass.instant(-3);
        assertThat(TAPPED.on("tablet").at(before)).isEqualTo(new Command("c1", "instructor", "tablet", before, NOTE));
    }

    @Test void the_board_keeps_some_ids_for_itself() {
        assertThat(Command.isOwn(Command.own("clock.7"))).isTrue();
        assertThat(Command.isOwn("create")).as("of older logs").isTrue();
        assertThat(Command.isOwn("c1")).isFalse();
    }

    @Test void an_id_is_one_to_sixty_four_printable_characters() {
        assertThat(new Command("c".repeat(64), "instructor", TestClass.START, NOTE).id()).hasSize(64);
        for (String id : new String[] {"", " ", "c".repeat(65), "c\n1"}) {
            assertThatThrownBy(() -> new Command(id, "instructor", TestClass.START, NOTE))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test void a_class_knows_what_a_command_wished_for() {
        TestClass c = TestClass.evening(2).open("welcome").pause(2);
        Recorded last = c.live().history().get((int) c.seq() - 1);
        assertThat(c.live().wishOf(last.commandId())).contains(last.event());
        assertThat(c.live().wishOf("never sent")).isEmpty();
    }

    @Test void a_clock_that_is_right_shows_the_years_from_2026_to_2099_and_a_log_those_from_2000_to_2199() {
        assertThat(Era.isPossibleNow(Instant.parse("2025-12-31T23:59:59Z"))).isFalse();
        assertThat(Era.isPossibleNow(Instant.parse("2026-01-01T00:00:00Z"))).isTrue();
        assertThat(Era.isPossibleNow(Instant.parse("2099-12-31T23:59:59Z"))).isTrue();
        assertThat(Era.isPossibleNow(Instant.parse("2100-01-01T00:00:00Z"))).isFalse();
        assertThat(Era.holds(Instant.parse("2000-01-01T00:00:00Z"))).isTrue();
        assertThat(Era.holds(Instant.parse("2200-01-01T00:00:00Z"))).isFalse();
    }
}
