package benchpace.web;

import benchpace.web.screen.shell.ScreenKind;
import java.util.ArrayList;
import java.util.List;

/** The addresses of all that shows a class: pages, parts of pages, documents and JSON. */
public final class EveryPage {
    private EveryPage() { }

    /** @param seat whose sheets are among them */
    static List<String> of(TestBoard board, String id, int seat) {
        List<String> all = new ArrayList<>();
        for (ScreenKind kind : ScreenKind.values()) {
            all.add("/classes/" + id + "/" + kind.token());
        }
        String sheets = "/classes/" + id + "/seats/" + seat;
        all.addAll(List.of("/api/classes/" + id, "/api/classes/" + id + "/events", "/classes/" + id + "/report",
                "/classes/" + id + "/report/what-if", "/api/classes/" + id + "/what-if",
                sheets + "/sheet", sheets + "/leave", "/classes/" + id + "/guest-codes",
                "/classes/" + id + "/calendar.ics",
                "/g/" + board.guestCode(id, seat),
                "/", "/table", "/helper", "/wall", "/api/classes", "/api/shown", "/shelf", "/devices", "/data",
                "/history", "/plans", "/api/plans", "/health"));
        return all;
    }

    /** Fails where one of them does not answer. A seat without a candle has no sheet to leave with. */
    public static void render(TestBoard board, String id, int seat) {
        for (String path : of(board, id, seat)) {
            Reply reply = board.get(path, board.instructor());
            if (reply.status() >= 400 && !(reply.status() == 404 && path.endsWith("/leave"))) {
                throw new AssertionError(path + " answered " + reply.status() + ": " + reply.body());
            }
        }
    }
}
