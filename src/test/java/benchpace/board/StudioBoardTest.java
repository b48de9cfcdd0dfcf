package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.plan.Studio;
import benchpace.store.CannotBeKept;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StudioBoardTest {
    private static final Instant NOW = Instant.parse("2027-03-04T18:00:00Z");
    private static final Studio HERS = new Studio("Hafenlicht", "Speicherzeile 3, Marrowby", Optional.of("#ffd400"));

    private @TempDir Path data;
    private Database database;
    private StudioBoard studio;

    @BeforeEach void open() {
        database = Database.open(data);
        studio = new StudioBoard(new Settings(database));
    }

    @AfterEach void close() {
        database.close();
    }

    @Test void the_demos_studio_is_shown_of_the_demos_classes_alone_until_somebody_says_whose_room_it_is() {
        AtomicInteger ids = new AtomicInteger();
        try (Boards boards = new Boards(new SqliteEventLog(database), () -> NOW,
                new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC),
                () -> "n" + ids.incrementAndGet(), new LeavingEarly(ShelfBoard.open(database, () -> NOW)))) {
            Watched demo = evening(boards, Demo.BY);
            Watched theirs = evening(boards, "instructor");
            assertThat(theirs.live().plan().place()).as("of an older board").isEqualTo(demo.live().plan().place());

            assertThat(studio.of(demo).name()).isEqualTo("The Tallow Loft");
            assertThat(studio.of(theirs)).isEqualTo(Studio.NONE).isEqualTo(studio.now());

            studio.change(HERS, Studio.NONE::equals);

            assertThat(List.of(studio.of(demo), studio.of(theirs), studio.now(),
                    new StudioBoard(new Settings(database)).now())).containsOnly(HERS);
        }
    }

    private static Watched evening(Boards boards, String by) {
        return boards.create(Demo.eveningPlan(), "Evening", NOW, Demo.eveningRoster().places(), by);
    }

    @Test void a_change_tells_what_was_before_and_one_that_was_meant_for_something_else_changes_nothing() {
        assertThat(studio.change(HERS, Studio.NONE::equals)).contains(Studio.NONE);
        assertThat(studio.change(Studio.NONE, Studio.NONE::equals)).isEmpty();
        assertThat(studio.now()).isEqualTo(HERS);
        assertThat(studio.change(Studio.NONE, HERS::equals)).contains(HERS);
        assertThat(new Settings(database).get("studio")).isEmpty();
    }

    @Test void what_would_not_be_read_back_is_not_taken() {
        assertThatExceptionOfType(CannotBeKept.class).isThrownBy(() ->
                studio.change(new Studio(" with blanks around it ", "", Optional.empty()), now -> true));
        assertThat(studio.now()).isEqualTo(Studio.NONE);
    }

    @Test void what_is_sent_along_with_a_question_names_neither_the_studio_nor_its_place() {
        studio.change(HERS, now -> true);

        String lines = ProblemReports.running(database, Map::of, "Benchpace",
                () -> List.of("Hafenlicht was opened in Speicherzeile 3, and in Marrowby", "all is well"))
                .facts(List.of(), List.of("Hafenlicht")).toString();

        assertThat(lines).contains("all is well", "studio").doesNotContain("Hafenlicht", "Speicherzeile", "Marrowby");
    }
}
