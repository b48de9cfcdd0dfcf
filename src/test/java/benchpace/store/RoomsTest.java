package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.cure.room.RoomFit;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RoomsTest {
    private static final Instant NOW = Instant.parse("2027-03-04T21:00:00Z");
    private static final RoomFit FAST = new RoomFit(0.1123456789012345, 0.1, 0.55, 0.05, 4);
    private static final RoomFit FASTER = new RoomFit(0.2, 0.08, 0.6, 0.04, 9);

    @TempDir
    private Path folder;
    private Database database;
    private Rooms rooms;

    @BeforeEach void open() {
        database = Database.open(folder);
        rooms = new Rooms(database);
    }

    @AfterEach void close() {
        database.close();
    }

    private void reopen() {
        close();
        open();
    }

    @Test void a_room_that_nobody_taught_starts_from_nothing() {
        assertThat(rooms.prior("a", "Loft")).isEqualTo(RoomFit.untaught());
        assertThat(rooms.all()).isEmpty();
    }

    @Test void the_next_class_starts_from_what_the_last_one_taught_a_little_less_certain_and_so_after_a_restart() {
        rooms.prior("a", "Loft");
        rooms.learn("a", "Loft", Optional.of(FAST), 40, NOW);
        reopen();

        assertThat(rooms.prior("b", "Loft")).isEqualTo(FAST.forNextClass());
        assertThat(rooms.prior("c", "Cellar")).isEqualTo(RoomFit.untaught());
        assertThat(rooms.all()).containsExactly(new Rooms.Taught("Loft", FAST, 1, NOW));
    }

    @Test void a_lesson_that_cannot_be_true_is_passed_over_and_the_one_before_it_counts() {
        rooms.prior("a", "Loft");
        rooms.learn("a", "Loft", Optional.of(FAST), 40, NOW);
        rooms.prior("b", "Loft");
        rooms.learn("b", "Loft", Optional.of(FASTER), 40, NOW);
        assertThat(rooms.unsound()).isZero();
        database.write(connection -> Statements.change(connection,
                "update room_lesson set log_loss_sd = -1 where class_id = ?", "b"));

        assertThat(rooms.unsound()).isEqualTo(1);
        assertThat(rooms.before("c", "Loft")).isEqualTo(FAST.forNextClass());
        assertThat(rooms.all()).singleElement().satisfies(taught -> assertThat(taught.fit()).isEqualTo(FAST));
    }

    @Test void what_a_class_started_from_stays_whatever_is_learned_or_reset_meanwhile() {
        RoomFit started = rooms.prior("slow", "Loft");
        rooms.prior("a", "Loft");
        rooms.learn("a", "Loft", Optional.of(FAST), 40, NOW);
        assertThat(rooms.prior("slow", "Loft")).isEqualTo(started);

        RoomFit second = rooms.prior("b", "Loft");
        rooms.reset("Loft");
        reopen();

        assertThat(rooms.prior("b", "Loft")).isEqualTo(second).isNotEqualTo(RoomFit.untaught());
        assertThat(rooms.prior("c", "Loft")).isEqualTo(RoomFit.untaught());
    }

    @Test void a_room_that_was_reset_is_not_taught_again_by_a_class_that_had_taught_it() {
        rooms.prior("a", "Loft");
        rooms.learn("a", "Loft", Optional.of(FAST), 40, NOW);
        rooms.prior("open", "Loft");
        rooms.reset("Loft");
        reopen();

        rooms.learn("a", "Loft", Optional.of(FAST), 41, NOW);
        assertThat(rooms.lessonSeq("a")).isEqualTo(Rooms.FORGOTTEN);
        assertThat(rooms.all()).isEmpty();

        rooms.learn("open", "Loft", Optional.of(FASTER), 30, NOW);
        assertThat(rooms.all()).as("a class that was still open teaches it").hasSize(1);
    }

    @Test void a_lesson_drawn_again_takes_the_place_of_the_earlier_one_of_that_class() {
        rooms.prior("a", "Loft");
        rooms.learn("a", "Loft", Optional.of(FAST), 40, NOW);
        rooms.prior("b", "Loft");
        rooms.learn("b", "Loft", Optional.of(FASTER), 30, NOW);
        assertThat(rooms.before("b", "Loft")).isEqualTo(FAST.forNextClass());

        rooms.learn("b", "Loft", Optional.of(FAST), 32, NOW.plusSeconds(60));

        assertThat(rooms.all()).containsExactly(new Rooms.Taught("Loft", FAST, 2, NOW.plusSeconds(60)));
        assertThat(rooms.lessonSeq("b")).isEqualTo(32);
    }

    @Test void a_class_that_taught_nothing_leaves_the_room_as_it_was() {
        rooms.prior("a", "Loft");
        rooms.learn("a", "Loft", Optional.of(FAST), 40, NOW);
        rooms.prior("b", "Loft");
        rooms.learn("b", "Loft", Optional.empty(), 30, NOW);

        assertThat(rooms.before("", "Loft")).isEqualTo(FAST.forNextClass());
        assertThat(rooms.lessonSeq("b")).isEqualTo(30);
    }

    @Test void a_place_without_a_name_is_a_room_of_its_own() {
        rooms.prior("a", "");
        rooms.learn("a", "", Optional.of(FAST), 40, NOW);

        assertThat(rooms.all()).extracting(Rooms.Taught::room).containsExactly("");
        assertThat(rooms.reset("")).isTrue();
        assertThat(rooms.reset("")).isFalse();
    }
}
