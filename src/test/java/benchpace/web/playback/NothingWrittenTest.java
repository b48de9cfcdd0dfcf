package benchpace.web.playback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.store.sqlite.Database;
import benchpace.web.RouteAddress;
import benchpace.web.cure.CureBoard;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole file before and after an evening was played back, on a board whose rooms and plans learn. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NothingWrittenTest {
    /** When devices were last seen is noted whatever they look at. */
    private static final Set<String> OF_DEVICES = Set.of("session");

    @TempDir
    private Path data;
    private CureBoard board;
    private String classId;

    @BeforeEach void an_evening_with_hand_tests_is_over() {
        board = new CureBoard(data);
        classId = board.poured(10, 1, 2, 3);
        board.minute(75).tap(classId, CureBoard.wish("judge-set").put("seat", 1));
        board.minute(80).tap(classId, CureBoard.wish("leave").put("seat", 2));
        board.minute(90).tap(classId, CureBoard.wish("close"));
    }

    @AfterEach void close() {
        board.close();
    }

    private Map<String, List<String>> whole() throws SQLException {
        Map<String, List<String>> whole = new TreeMap<>();
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + data.resolve(Database.FILE));
                Statement asked = file.createStatement()) {
            List<String> tables = new ArrayList<>();
            try (ResultSet names = asked.executeQuery("select name from sqlite_master where type = 'table'")) {
                while (names.next()) {
                    tables.add(names.getString(1));
                }
            }
            tables.removeAll(OF_DEVICES);
            for (String table : tables) {
                whole.put(table, rows(asked, table));
            }
        }
        return whole;
    }

    /** What follows from the close is drawn by the board in its own time. */
    private Map<String, List<String>> settled() throws Exception {
        AtomicReference<Map<String, List<String>>> last = new AtomicReference<>(Map.of());
        for (String table : List.of("room_lesson", "class_summary")) {
            await().atMost(Duration.ofSeconds(60)).until(() -> !whole().get(table).isEmpty());
        }
        await().atMost(Duration.ofSeconds(60)).pollInterval(Duration.ofMillis(200)).during(Duration.ofSeconds(1))
                .until(() -> {
                    Map<String, List<String>> now = whole();
                    return now.equals(last.getAndSet(now));
                });
        return last.get();
    }

    private static List<String> rows(Statement asked, String table) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (ResultSet row = asked.executeQuery("select * from \"" + table + "\"")) {
            while (row.next()) {
                StringBuilder text = new StringBuilder();
                for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                    text.append(row.getString(i)).append('|');
                }
                rows.add(text.toString());
            }
        }
        return rows.stream().sorted().toList();
    }

    private HttpResponse<String> ask(String method, String path, String body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(board.address()).resolve(path))
                .header("Authorization", "Bearer " + board.instructor()).header("Content-Type", "application/json");
        boolean stream = path.endsWith("/stream");
        return HttpClient.newHttpClient().send(request.method(stream ? "HEAD" : method, method.equals("GET")
                ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private String opened() {
        return CureBoard.json(board.post("/api/playbacks", Json.object().put("classId", classId), board.instructor()))
                .get("id").textValue();
    }

    @Test void an_evening_watched_to_its_end_leaves_the_file_as_it_was() throws Exception {
        Map<String, List<String>> before = settled();
        assertThat(before.get("event")).hasSizeGreaterThan(5);

        String id = opened();
        String until = CureBoard.json(board.get("/api/playbacks/" + id, board.instructor())).get("until").textValue();
        ask("PUT", "/api/playbacks/" + id, "{\"speed\":60}");
        for (String screen : List.of("instructor", "helper", "wall", "wait")) {
            assertThat(ask("GET", "/classes/" + id + "/" + screen, "").statusCode()).isEqualTo(200);
        }
        ask("PUT", "/api/playbacks/" + id, "{\"at\":\"" + until + "\"}");
        assertThat(CureBoard.json(board.get("/api/classes/" + id, board.instructor())).get("status").textValue())
                .isEqualTo("closed");
        assertThat(ask("DELETE", "/api/playbacks/" + id, "").statusCode()).isEqualTo(204);

        assertThat(whole()).isEqualTo(before);
    }

    @Test void no_address_there_is_changes_anything_by_its_id() throws Exception {
        String id = opened();
        Map<String, List<String>> before = settled();
        List<Endpoint> endpoints = board.server().endpoints();
        int changing = 0;

        for (Endpoint endpoint : endpoints) {
            boolean own = endpoint.path.startsWith("/api/playbacks");
            if (endpoint.path.contains("{id}") && !own && endpoint.method != HandlerType.HEAD) {
                String path = RouteAddress.of(endpoint.path, id);
                for (String body : bodies()) {
                    HttpResponse<String> answer = ask(endpoint.method.name(), path, body);
                    assertThat(answer.statusCode()).as(endpoint.method + " " + path + " " + answer.body())
                            .isLessThan(500);
                    if (endpoint.method != HandlerType.GET) {
                        changing++;
                        assertThat(answer.statusCode()).as(endpoint.method + " " + path).isGreaterThanOrEqualTo(400);
                    }
                }
            }
        }
        assertThat(changing).isGreaterThan(10);
        assertThat(whole()).isEqualTo(before);
    }

    private static List<String> bodies() {
        ObjectNode tap = CureBoard.wish("finish-step").put("seat", 1).put("step", "pour").put("confirm", "Evening");
        return List.of("{}", Json.text(tap));
    }
}
