package benchpace.web;

import benchpace.board.Boards;
import benchpace.board.ShelfBoard;
import benchpace.board.view.ViewMaker;
import benchpace.files.Json;
import benchpace.store.EventLog;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.HandlerType;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** A board behind its real server, over real files, on a clock of the test's: for tests of other rooms. */
public final class NetworkedBoard implements AutoCloseable {
    private final TestBoard board;

    /** @param clocks makes the board's clock anew at each start, from what was written down before */
    public NetworkedBoard(Path data, Function<EventLog, ? extends InstantSource> clocks, ViewMaker maker) {
        this.board = TestBoard.open(data, clocks, maker);
    }

    /** What the board answered. @param body JSON, or a page */
    public record Told(int status, String body) {
        public boolean done() {
            return status < 300;
        }

        public long seq() {
            return json().path("seq").longValue();
        }

        public boolean duplicate() {
            return json().path("duplicate").booleanValue();
        }

        private com.fasterxml.jackson.databind.JsonNode json() {
            try {
                return Json.read(body);
            } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
                throw new AssertionError("no JSON: " + status + " " + body, e);
            }
        }
    }

    public Boards boards() {
        return board.boards();
    }

    public ShelfBoard shelf() {
        return board.shelf();
    }

    public InstantSource clock() {
        return board.clock;
    }

    public EventLog log() {
        return board.log();
    }

    public void restart() {
        board.restart();
    }

    private String token(String by) {
        return by.equals("instructor") ? board.instructor() : by.equals("guest") ? "" : board.helper();
    }

    public Told command(String classId, String by, ObjectNode command) {
        return told(board.tap(classId, command, token(by)));
    }

    public Told leave(String classId, int seat, ObjectNode wish) {
        return told(board.post("/api/classes/" + classId + "/seats/" + seat + "/leave", Json.text(wish),
                board.instructor()));
    }

    private static Told told(Reply reply) {
        return new Told(reply.status(), reply.body());
    }

    /** Every address that shows something, streams left out, as the instructor gets it. */
    public Map<String, Told> addresses(String classId) {
        Map<String, Told> told = new LinkedHashMap<>();
        board.server().endpoints().stream().filter(e -> e.method.equals(HandlerType.GET))
                .filter(e -> !e.path.endsWith("/stream") && !e.path.matches(".*\\.(js|webm|mp4)"))
                .forEach(e -> told.put(e.path, told(board.get(
                        RouteAddress.of(e.path, classId), board.instructor()))));
        return told;
    }

    @Override public void close() {
        board.close();
    }
}
