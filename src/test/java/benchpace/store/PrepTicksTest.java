package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.PrepTicks.Tick;
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
class PrepTicksTest {
    private static final Instant NOON = Instant.parse("2027-03-04T12:00:00.123Z");
    private static final Tick WICKS = new Tick("place:wick", "AB", NOON);
    private static final Tick SCALES = new Tick("shared:scales", "instructor", NOON.plusSeconds(60));

    @TempDir
    private Path folder;
    private Database database;
    private PrepTicks ticks;

    @BeforeEach void open() {
        database = Database.open(folder);
        ticks = new PrepTicks(database);
    }

    @AfterEach void close() {
        database.close();
    }

    private void reopen() {
        close();
        open();
    }

    @Test void what_is_ticked_off_outlives_a_restart_in_the_order_in_which_it_was_done() {
        ticks.tick("thursday", SCALES);
        ticks.tick("thursday", WICKS);
        ticks.tick("friday", WICKS);
        reopen();

        assertThat(ticks.all()).isEqualTo(Map.of("thursday", Map.of("place:wick", WICKS, "shared:scales", SCALES),
                "friday", Map.of("place:wick", WICKS)));
        assertThat(ticks.all().get("thursday").values()).containsExactly(WICKS, SCALES);
    }

    @Test void a_second_tick_leaves_the_first_and_who_made_it() {
        ticks.tick("thursday", WICKS);
        ticks.tick("thursday", new Tick("place:wick", "CD", NOON.plusSeconds(1)));
        reopen();

        assertThat(ticks.all().get("thursday")).containsExactly(Map.entry("place:wick", WICKS));
    }

    @Test void a_tick_that_is_taken_away_leaves_nothing_and_twice_is_once() {
        ticks.tick("thursday", WICKS);
        ticks.untick("thursday", "place:wick");
        ticks.untick("thursday", "place:wick");
        reopen();

        assertThat(ticks.all()).isEmpty();
    }

    @Test void a_class_that_is_erased_takes_its_own_ticks_with_it_and_no_others() {
        ticks.tick("thursday", WICKS);
        ticks.tick("friday", WICKS);
        EventLog log = new SqliteEventLog(database);
        log.delete("thursday", NOON);
        assertThat(ticks.all()).as("it can be had back").containsKey("thursday");
        log.erase("thursday");
        reopen();

        assertThat(ticks.all()).containsOnlyKeys("friday");
    }
}
