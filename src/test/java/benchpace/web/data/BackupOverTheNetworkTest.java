package benchpace.web.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.store.SqliteEventLog;
import benchpace.store.backup.BackupFile;
import benchpace.store.backup.Progress;
import benchpace.store.backup.Restore;
import benchpace.store.sqlite.Database;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import benchpace.web.stream.StreamLimits;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BackupOverTheNetworkTest {
    @TempDir Path temp;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(temp.resolve("data"));
    }

    @AfterEach void close() {
        board.close();
    }

    private Reply told() {
        return board.get("/api/backup", board.instructor()).ok();
    }

    private String made() {
        board.post("/api/backup", "{}", board.instructor()).ok();
        await().atMost(Duration.ofSeconds(60)).until(() -> !told().text("state").equals("making"));
        assertThat(told().text("state")).as(told().body()).isEqualTo("ready");
        return told().text("url");
    }

    private Path fetched(String url) throws Exception {
        Path file = temp.resolve("fetched.backup");
        HttpResponse<Path> reply = HttpClient.newHttpClient().send(board.request(url)
                .header("Authorization", "Bearer " + board.instructor()).build(),
                HttpResponse.BodyHandlers.ofFile(file));
        assertThat(reply.statusCode()).isEqualTo(200);
        assertThat(reply.headers().firstValue("Content-Disposition").orElseThrow()).contains("attachment", ".backup");
        return file;
    }

    @Test void it_is_made_while_a_class_runs_fetched_and_restored_equal_and_lets_nobody_in() throws Exception {
        String id = board.evening();
        board.tap(id, TestBoard.opening("wicks")).ok();
        board.tap(id, TestBoard.finish(1, "wicks")).ok();

        Path file = fetched(made());

        assertThat(BackupFile.check(file, Progress.UNHEARD).holdings().classes()).isEqualTo(1);
        new Restore(temp.resolve("new")).from(file, false, Progress.UNHEARD);
        try (Database database = Database.open(temp.resolve("new"))) {
            assertThat(new SqliteEventLog(database).read(id)).isEqualTo(board.boards().find(id).orElseThrow().live()
                    .log()).hasSize(3);
        }
        try (TestBoard restored = new TestBoard(temp.resolve("new"), new TestClock(),
                StreamLimits.USUAL)) {
            assertThat(restored.get("/api/classes/" + id, board.instructor()).status()).as("an old token")
                    .isEqualTo(401);
            assertThat(restored.state(id).json().get("seq").intValue()).isEqualTo(3);
        }
    }

    @Test void the_page_says_when_the_last_one_was_made_and_asks_gently_after_two_weeks() {
        board.evening();
        assertThat(board.get("/data", board.instructor()).ok().body()).contains("No backup was made yet",
                "on this computer alone");

        made();
        assertThat(board.get("/data", board.instructor()).ok().body()).contains("The last backup was made today")
                .doesNotContain("class=\"due\"");
        board.testClock().advance(Duration.ofDays(15));
        assertThat(board.get("/data", board.instructor()).ok().body()).contains("15 days ago", "time for a new one");
    }

    @Test void it_can_be_fetched_for_ten_minutes_and_then_is_gone_from_the_folder() throws Exception {
        String url = made();
        fetched(url);
        fetched(url);

        board.testClock().advance(Duration.ofMinutes(11));

        assertThat(board.get(url, board.instructor()).status()).isEqualTo(404);
        assertThat(told().text("state")).isEqualTo("none");
        try (Stream<Path> files = Files.list(temp.resolve("data"))) {
            assertThat(files.map(file -> file.getFileName().toString())).noneMatch(name -> name.contains("outgoing"));
        }
    }

    @Test void it_goes_although_nobody_asks_for_it_again() {
        made();
        Path outgoing = temp.resolve("data/outgoing.backup");
        assertThat(outgoing).exists();

        board.testClock().advance(Duration.ofMinutes(11));

        await().atMost(Duration.ofSeconds(20)).until(() -> !Files.exists(outgoing));
    }

    @Test void a_stop_of_the_board_leaves_none_of_it_behind() throws Exception {
        made();

        board.restart();

        assertThat(told().text("state")).isEqualTo("none");
        assertThat(temp.resolve("data/outgoing.backup")).doesNotExist();
    }

    @Test void the_folder_stays_locked_for_other_boards_while_and_after_one_is_made() throws Exception {
        made();

        Files.copy(temp.resolve("data/outgoing.backup"), temp.resolve("b.backup"));
        Process second = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), "benchpace.Main", "restore", temp.resolve("b.backup").toString(),
                "--data", temp.resolve("data").toString(), "--replace").redirectErrorStream(true).start();
        String said = new String(second.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(second.waitFor()).as(said).isEqualTo(1);
        assertThat(said).contains("in use by another running Benchpace");
    }

    @Test void helpers_and_strangers_get_none() {
        String url = made();
        for (String token : List.of(board.helper(), "")) {
            int refused = token.isEmpty() ? 401 : 403;
            assertThat(board.post("/api/backup", "{}", token).status()).isEqualTo(refused);
            assertThat(board.get("/api/backup", token).status()).isEqualTo(refused);
            assertThat(board.get(url, token).status()).isEqualTo(refused);
            assertThat(board.get("/data", token).status()).isEqualTo(refused);
        }
    }
}
