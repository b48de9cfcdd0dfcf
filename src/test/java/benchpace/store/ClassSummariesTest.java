package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import benchpace.history.Lost;
import benchpace.store.ClassSummaries.Kept;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ClassSummariesTest {
    private static final Instant SEVEN = Instant.parse("2026-03-04T19:00:00Z");
    private static final ClassFigures FULL = new ClassFigures(SEVEN, SEVEN.plusSeconds(500), SEVEN.minusSeconds(900),
            Optional.of(SEVEN.plusMillis(1)), ReadyBy.HAND_TEST,
            List.of(new Lost(Cause.STEP, "wicks", 7.25), new Lost(Cause.AWAY, "", 1.5)), 8, 12,
            new FlagFigures(4, 3, OptionalDouble.of(1.25), 2), new CureFigures(6, 5, OptionalDouble.of(-2.5)));
    private static final ClassFigures EMPTY = new ClassFigures(SEVEN, SEVEN, SEVEN, Optional.empty(),
            ReadyBy.NOBODY, List.of(), 0, 0, FlagFigures.NONE, CureFigures.NONE);

    @TempDir
    private Path folder;
    private Database database;
    private ClassSummaries summaries;

    @BeforeEach void open() {
        database = Database.open(folder);
        summaries = new ClassSummaries(database);
        new SqliteEventLog(database).append("a", ClassOfThree.created());
    }

    @AfterEach void close() {
        database.close();
    }

    @Test void what_is_kept_is_read_back_after_a_restart() {
        summaries.put("a", new Kept(7, 1, FULL));
        database.close();
        database = Database.open(folder);

        assertThat(new ClassSummaries(database).all()).isEqualTo(Map.of("a", new Kept(7, 1, FULL)));
    }

    @Test void a_newer_one_takes_its_place_with_all_that_belongs_to_it() {
        summaries.put("a", new Kept(7, 1, FULL));

        assertThat(summaries.put("a", new Kept(9, 2, EMPTY))).isTrue();
        assertThat(summaries.all()).isEqualTo(Map.of("a", new Kept(9, 2, EMPTY)));
        assertThat(count("class_lost")).isZero();
    }

    @Test void deleting_a_class_erases_it() {
        SqliteEventLog log = new SqliteEventLog(database);
        summaries.put("a", new Kept(7, 1, FULL));
        log.delete("a", SEVEN);
        log.erase("a");

        assertThat(count("class_summary")).isZero();
        assertThat(count("class_lost")).isZero();
    }

    @Test void a_class_that_was_deleted_meanwhile_leaves_nothing() {
        SqliteEventLog log = new SqliteEventLog(database);
        log.delete("a", SEVEN);
        assertThat(summaries.put("a", new Kept(7, 1, FULL))).isFalse();
        log.erase("a");

        assertThat(summaries.put("a", new Kept(7, 1, FULL))).isFalse();
        assertThat(summaries.put("never there", new Kept(7, 1, FULL))).isFalse();
        assertThat(summaries.all()).isEmpty();
    }

    @Test void a_row_that_cannot_be_true_is_passed_over_and_takes_no_other_along() {
        new SqliteEventLog(database).append("b", ClassOfThree.created());
        summaries.put("a", new Kept(7, 1, FULL));
        summaries.put("b", new Kept(3, 1, EMPTY));
        database.write(c -> Statements.change(c, "update class_summary set flags_answered = 9 where class_id = 'a'"));

        assertThat(summaries.all()).containsOnlyKeys("b");
    }

    private int count(String table) {
        return database.read(connection -> {
            try (var select = connection.prepareStatement("select count(*) from " + table);
                    var row = select.executeQuery()) {
                return row.getInt(1);
            }
        });
    }
}
