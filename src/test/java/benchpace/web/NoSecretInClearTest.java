package benchpace.web;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatNumber;
import benchpace.store.Settings;
import benchpace.store.sqlite.Database;
import benchpace.web.entrance.RawExchange;
import benchpace.web.guest.GuestCodes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whoever gets hold of the data folder or of the log can open nothing with it: OWASP ASVS 5.0, 13.3.1 (secrets), 16.2.5
 * (what is logged).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NoSecretInClearTest {
    @TempDir Path folder;
    private Path data;
    private TestBoard board;
    private final List<String> secrets = new ArrayList<>();
    private final StringBuffer log = new StringBuffer();
    private final Logger root = Logger.getLogger("");
    private final Level before = root.getLevel();
    private final Handler listening = new Handler() {
        @Override public void publish(LogRecord record) {
            if (!record.getLoggerName().startsWith("jdk.")) { // which is the test's own browser
                log.append(new SimpleFormatter().format(record));
            }
        }

        @Override public void flush() { }

        @Override public void close() { }
    };

    @BeforeEach void open() {
        data = folder.resolve("data");
        listening.setLevel(Level.ALL);
        root.addHandler(listening);
        root.setLevel(Level.INFO);
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        root.removeHandler(listening);
        root.setLevel(before);
        board.close();
    }

    private String secret(String text) {
        assertThat(text).isNotBlank();
        secrets.add(text);
        return text;
    }

    private void everyWayIn() {
        secret(board.access().keys().newInstructorKey());
        secret(board.helperKey());
        secret(board.access().keys().wall());
        secret(board.instructor());
        secret(board.helper());
        secret(board.post("/api/pair", "{\"pin\":\"" + TestBoard.WALL_PIN + "\"}", "").text("token"));
        String asked = secret(board.post("/api/instructor-keys", "{}", board.instructor()).text("key"));
        secret(board.post("/api/pair", "{\"key\":\"" + asked + "\"}", "").ok().text("token"));
        secret(board.post("/api/helper-keys", "{}", board.instructor()).text("key"));
        secrets.addAll(List.of(TestBoard.PIN, TestBoard.HELPER_PIN, TestBoard.WALL_PIN));
    }

    private void anEvening() {
        String id = board.evening();
        board.get("/classes/" + id + "/guest-codes", board.instructor()).ok();
        for (int seat = 1; seat <= 8; seat++) {
            secret(board.guestCode(id, seat));
        }
        board.tap(id, command("guests-may-tell").put("on", true)).ok();
        board.tap(id, opening("wicks")).ok();
        board.get("/g/" + board.guestCode(id, 4), "").ok();
    }

    /** A secret where it should not be is not made worse by being written down. */
    private void everythingGoesWrong() throws IOException {
        String key = secrets.get(0);
        for (String path : List.of("/" + key, "/?key=" + key, "/g/" + key, "/api/classes/" + key, "/static/" + key,
                "/api/classes/x/events?after=" + key)) {
            board.get(path, key);
            board.post(path, "{\"key\":\"" + key + "\",", key);
        }
        board.post("/api/pair", "{\"key\":\"" + key + "\",\"pin\":7}", "");
        board.post("/api/pair", "{\"pin\":\"" + TestBoard.PIN + "\"", "");
        RawExchange.of(board, "GET /" + key + "% HTTP/1.1\nHost: localhost\nCookie: benchpace=" + key + "\nConnection: "
                + "close\n\n");
        RawExchange.of(board, "NONSENSE /" + key + "\n\n");
    }

    private String bytesOfTheFolder() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    @Test void an_evening_leaves_nothing_in_the_data_folder_that_opens_anything() throws IOException {
        everyWayIn();
        anEvening();

        assertThat(bytesOfTheFolder()).contains("guests-may-tell").doesNotContain(secrets.toArray(String[]::new));
        board.restart();
        assertThat(bytesOfTheFolder()).doesNotContain(secrets.toArray(String[]::new));
    }

    @Test void the_log_of_an_evening_on_which_everything_goes_wrong_tells_nothing_that_opens_anything()
            throws IOException {
        everyWayIn();
        anEvening();
        everythingGoesWrong();

        assertThat(log.toString()).doesNotContain(secrets.toArray(String[]::new));
    }

    @Test void what_an_older_board_kept_in_clear_is_erased_and_what_was_printed_of_it_opens_on() throws IOException {
        String id = board.evening();
        String key = secret("helper-key-of-an-older-board");
        String hmac = secret("guest-secret-of-an-older-board");
        board.goAway();
        try (Database database = Database.open(data)) {
            Settings settings = new Settings(database);
            settings.put(OlderSecrets.HELPER_KEY, key);
            settings.put(OlderSecrets.GUEST_SECRET, hmac);
            assertThat(bytesOfTheFolder()).contains(key, hmac);
        }
        String printed = secret(GuestCodes.ofOlderBoard(hmac, id, new SeatNumber(4)));

        board.comeBack();

        assertThat(bytesOfTheFolder()).doesNotContain(secrets.toArray(String[]::new));
        assertThat(board.post("/api/pair", "{\"key\":\"" + key + "\"}", "").ok().text("role")).isEqualTo("helper");
        assertThat(board.get("/g/" + printed, "").ok().body()).contains("eat 4");
    }

    @Test void codes_are_forgotten_half_a_day_after_their_class_was_closed() {
        String id = board.evening();
        String printed = board.guestCode(id, 4);
        board.tap(id, command("close")).ok();
        board.get("/classes/" + id + "/guest-codes", board.instructor()).ok();
        assertThat(board.get("/g/" + printed, "").status()).as("it may be opened again").isEqualTo(200);
        board.testClock().advanceMinutes(13 * 60);

        board.erasing().look();

        assertThat(board.get("/g/" + printed, "").status()).isEqualTo(404);
    }

    @Test void other_users_of_the_machine_cannot_look_into_the_folder() throws IOException {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data))).isEqualTo("rwx------");
        for (String file : List.of("benchpace.db", "benchpace.db-wal", "benchpace.db-shm")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data.resolve(file)))).as(file)
                    .isEqualTo("rw-------");
        }
    }
}
