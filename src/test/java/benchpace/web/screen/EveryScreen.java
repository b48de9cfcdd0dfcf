package benchpace.web.screen;

import benchpace.board.ClassBoard;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All that anybody can look at in a class, drawn for everybody who may. */
public final class EveryScreen {
    public static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "", "tablet");
    public static final Viewer HELPER = new Viewer(Role.HELPER, "MO", "phone");
    /** What is drawn seat by seat is drawn for these many: a long table says nothing new. */
    private static final int SEATS = 8;

    private static final Screens SCREENS = new Screens();

    private EveryScreen() { }

    /** Name of the page, and of who looks, to its HTML. */
    public static Map<String, String> of(ClassBoard board, ClassView view) {
        Map<String, String> pages = of(view);
        view.seats().stream().limit(SEATS).filter(s -> s.candle().isPresent()).forEach(s -> pages.put(
                "sheet " + s.seat() + " cut open",
                SCREENS.sheet(view, s.seat(), LEAD, board.cutAway(s.seat()))));
        ClassReport report = board.report();
        pages.put("look back", SCREENS.report(report, Optional.empty(), board.live().plan(), LEAD,
                SampleGuests.known()));
        return pages;
    }

    /** What they say of each candle, by seat and screen. */
    public static Map<Integer, Map<String, String>> candles(ClassView view) {
        return CandleWords.of(view, SCREENS, LEAD);
    }

    /** Without what only a board can draw. */
    public static Map<String, String> of(ClassView view) {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("table", SCREENS.page(ScreenKind.INSTRUCTOR, view, LEAD));
        pages.put("helper", SCREENS.page(ScreenKind.HELPER, view, HELPER));
        pages.put("wall", SCREENS.page(ScreenKind.WALL, view, Viewer.GUEST));
        pages.put("wait of the lead", SCREENS.page(ScreenKind.WAIT, view, LEAD));
        pages.put("wait of a helper", SCREENS.page(ScreenKind.WAIT, view, HELPER));
        for (SeatView seat : view.seats().subList(0, Math.min(SEATS, view.seats().size()))) {
            for (Viewer viewer : List.of(LEAD, HELPER)) {
                pages.put("sheet " + seat.seat() + " of " + viewer.role(), SCREENS.sheet(view, seat.seat(), viewer));
            }
            pages.put("phone " + seat.seat(), SCREENS.guest(GuestPage.of(view, seat.seat(), "code")));
        }
        return pages;
    }
}
