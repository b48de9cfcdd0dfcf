package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the screens of a class say of each candle, read off them as people read them. */
public final class CandleWords {
    private CandleWords() { }

    /** Of every seat that counts and has a candle: name of the screen to its words. */
    public static Map<Integer, Map<String, String>> of(ClassView view, Screens screens, Viewer lead) {
        Map<String, String> table = screens.fragments(ScreenKind.INSTRUCTOR, view, lead);
        String helper = screens.fragments(ScreenKind.HELPER, view, new Viewer(Role.HELPER, "MO")).get("seats");
        String wall = screens.fragments(ScreenKind.WALL, view, Viewer.GUEST).get("wall-seats");
        List<String> helped = List.of(helper.split("(?=<li class=\"row )"));
        String strips = view.waiting().strips().isEmpty() ? ""
                : screens.fragments(ScreenKind.WAIT, view, lead).getOrDefault("wait-chart", "");
        Map<Integer, Map<String, String>> seats = new TreeMap<>();
        for (SeatView seat : view.seats()) {
            if (seat.candle().isPresent() && seat.counts() && seat.mark() != SeatView.Mark.PAUSED) {
                seats.put(seat.seat(), ofSeat(view, seat.seat(), screens, lead, table, helped, strips));
                onTheWall(wall, seat.seat()).ifPresent(words -> seats.get(seat.seat()).put("wall", words));
            }
        }
        return seats;
    }

    private static Map<String, String> ofSeat(ClassView view, int n, Screens screens, Viewer lead,
                                              Map<String, String> table, List<String> helped, String strips) {
        Map<String, String> said = new TreeMap<>();
        said.put("tile", ReadAloud.at(view.now(),
                table.get("seat-" + n).replaceAll("<span class=\"unseen\">.*", "")));
        said.put("sheet", ReadAloud.at(view.now(), part(screens.sheet(view, n, lead), "<p class=\"sheet__candle\">",
                "</p>")));
        said.put("helper", ReadAloud.at(view.now(), helped.stream()
                .filter(row -> row.contains("face__number\">" + n + "</b>")).findFirst().orElseThrow()));
        said.put("guest", ReadAloud.at(view.now(),
                part(screens.guest(GuestPage.of(view, n, "code")), "<h1", "</main>")));
        if (strips.contains("<dt>Seat " + n + "</dt>")) {
            said.put("wait", ReadAloud.at(view.now(), part(part(strips, "<dt>Seat " + n + "</dt>", "</div>"),
                    "candle ", ";")));
        }
        return said;
    }

    private static Optional<String> onTheWall(String wall, int seat) {
        return Optional.of(part(part(wall, "data-candle=\"" + seat + "\"", "</li>"), "<span class=\"unseen\">",
                        "</span>")).filter(words -> !words.isEmpty()).map(words -> words.replaceAll("<[^>]*>", ""));
    }

    static String part(String html, String from, String until) {
        int start = html.indexOf(from);
        return start < 0 ? "" : html.substring(start, Math.max(start, html.indexOf(until, start)));
    }
}
