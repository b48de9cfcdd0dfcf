package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Hashes;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SessionsTest {
    private static final Instant NOW = Instant.parse("2027-03-04T18:30:00Z");
    @TempDir Path folder;
    private Database database;
    private Sessions sessions;

    @BeforeEach void open() {
        database = Database.open(folder);
        sessions = new Sessions(database);
    }

    @AfterEach void close() {
        database.close();
    }

    @Test void a_device_let_in_stays_so_over_a_restart() {
        sessions.create("token-of-the-tablet", "instructor", "tablet", NOW);
        close();
        open();

        assertThat(sessions.find("token-of-the-tablet")).hasValueSatisfying(session -> {
            assertThat(session.role()).isEqualTo("instructor");
            assertThat(session.label()).isEqualTo("tablet");
            assertThat(session.created()).isEqualTo(NOW);
        });
        assertThat(sessions.find("Token-of-the-tablet")).isEmpty();
        assertThat(sessions.find("")).isEmpty();
    }

    @Test void the_token_itself_is_nowhere_in_the_data_folder() throws IOException {
        sessions.create("token-of-the-tablet", "instructor", "tablet", NOW);

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isNotEmpty().allSatisfy(file -> assertThat(
                    new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                    .doesNotContain("token-of-the-tablet"));
        }
    }

    /** FIPS 180-4's example "abc", as published with the standard (NIST, "SHA256" example values). */
    @Test void tokens_are_hashed_as_the_standard_says() {
        assertThat(Hashes.of("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test void a_device_sent_away_is_gone() {
        sessions.create("a", "helper", "KL", NOW);
        sessions.create("b", "helper", "MO", NOW);

        sessions.remove("a");

        assertThat(sessions.find("a")).isEmpty();
        assertThat(sessions.find("b")).isPresent();
    }

    @Test void devices_let_in_long_ago_are_forgotten() {
        sessions.create("old", "helper", "KL", NOW);
        sessions.create("new", "helper", "MO", NOW.plus(Duration.ofDays(3)));

        assertThat(sessions.prune(NOW.plus(Duration.ofDays(2)))).isEqualTo(1);
        assertThat(sessions.find("old")).isEmpty();
        assertThat(sessions.find("new")).isPresent();
    }

    @Test void one_token_lets_in_one_device() {
        sessions.create("a", "helper", "KL", NOW);

        assertThatThrownBy(() -> sessions.create("a", "instructor", "", NOW)).isInstanceOf(StoreException.class);
        assertThat(sessions.find("a").orElseThrow().role()).isEqualTo("helper");
    }

    @Test void settings_are_kept_changed_and_removed() {
        Settings settings = new Settings(database);
        assertThat(settings.get("helper-key")).isEmpty();

        settings.put("helper-key", "one");
        settings.put("helper-key", "two");
        assertThat(settings.get("helper-key")).contains("two");

        settings.remove("helper-key");
        assertThat(settings.get("helper-key")).isEmpty();
    }

    @Test void those_let_in_by_a_wrong_clock_are_moved_to_when_that_was() {
        sessions.create("early", "helper", "KL", NOW.minusSeconds(60));
        sessions.create("meanwhile", "helper", "MO", NOW.plusSeconds(60));

        sessions.move(NOW, NOW.plusSeconds(120), Duration.ofDays(-300));

        assertThat(sessions.find("early").orElseThrow().created()).isEqualTo(NOW.minusSeconds(60));
        assertThat(sessions.find("meanwhile").orElseThrow().created())
                .isEqualTo(NOW.plusSeconds(60).minus(Duration.ofDays(300)));
    }
}
