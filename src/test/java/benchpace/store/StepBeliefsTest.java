package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.pace.StepPrior;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StepBeliefsTest {
    private static final Instant NOW = Instant.parse("2027-03-04T21:00:00Z");
    private static final StepPrior SLOW = new StepPrior(0.1123456789012345, 0.03, 0.07);
    private static final StepPrior SLOWER = new StepPrior(0.3, 0.02, Double.NaN);

    @TempDir
    private Path folder;
    private Database database;
    private StepBeliefs beliefs;

    @BeforeEach void open() {
        database = Database.open(folder);
        beliefs = new StepBeliefs(database);
    }

    @AfterEach void close() {
        database.close();
    }

    private void reopen() {
        close();
        open();
    }

    @Test void without_a_lesson_the_plan_is_all_there_is() {
        assertThat(beliefs.accepted("pour", "Loft")).isEmpty();
        assertThat(beliefs.startedFrom("a", "pour", "Loft")).isEmpty();
        assertThat(beliefs.forget("pour", "Loft")).isFalse();
    }

    @Test void what_was_accepted_holds_for_that_plan_at_that_place_and_outlives_a_restart() {
        StepBeliefs.Accepted lesson = new StepBeliefs.Accepted(Map.of("wicks", SLOW, "mix", SLOWER), 3, NOW);
        beliefs.accept("pour", "Loft", lesson);
        reopen();

        assertThat(beliefs.accepted("pour", "Loft")).contains(lesson);
        assertThat(beliefs.accepted("pour", "Cellar")).isEmpty();
        assertThat(beliefs.accepted("six", "Loft")).isEmpty();
        assertThat(beliefs.startedFrom("a", "pour", "Loft")).isEqualTo(lesson.steps());
    }

    @Test void a_class_keeps_what_it_started_from_whatever_is_accepted_or_forgotten_later() {
        assertThat(beliefs.startedFrom("before", "pour", "Loft")).isEmpty();
        beliefs.accept("pour", "Loft", new StepBeliefs.Accepted(Map.of("wicks", SLOW), 3, NOW));
        assertThat(beliefs.startedFrom("between", "pour", "Loft")).containsOnlyKeys("wicks");
        beliefs.accept("pour", "Loft", new StepBeliefs.Accepted(Map.of("mix", SLOWER), 4, NOW));
        reopen();

        assertThat(beliefs.startedFrom("before", "pour", "Loft")).isEmpty();
        assertThat(beliefs.startedFrom("between", "pour", "Loft")).isEqualTo(Map.of("wicks", SLOW));
        assertThat(beliefs.startedFrom("after", "pour", "Loft")).isEqualTo(Map.of("mix", SLOWER));
        assertThat(beliefs.forget("pour", "Loft")).isTrue();
        assertThat(beliefs.startedFrom("last", "pour", "Loft")).isEmpty();
        assertThat(beliefs.startedFrom("after", "pour", "Loft")).isEqualTo(Map.of("mix", SLOWER));
    }
}
