package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import benchpace.plan.Studio;
import benchpace.store.CannotBeKept;
import benchpace.store.Settings;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StudioBoardTest {
    private static final String DEMO = "The Tallow Loft, Quay Lane, Marrowby";
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

    @Test void the_demos_studio_is_shown_where_the_demo_is_held_until_somebody_says_whose_room_it_is() {
        assertThat(studio.at(DEMO).name()).isEqualTo("The Tallow Loft");
        assertThat(studio.at("Speicherzeile 3, Marrowby")).isEqualTo(Studio.NONE);
        assertThat(studio.at("")).isEqualTo(Studio.NONE).isEqualTo(studio.now());

        studio.change(HERS, Studio.NONE::equals);

        assertThat(studio.at(DEMO)).isEqualTo(HERS);
        assertThat(studio.at("")).isEqualTo(HERS).isEqualTo(new StudioBoard(new Settings(database)).now());
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
