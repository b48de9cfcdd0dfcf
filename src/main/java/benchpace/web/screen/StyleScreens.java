package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.style.Excerpt;
import benchpace.web.screen.style.Situation;
import benchpace.web.screen.style.StyleGiven;
import benchpace.web.screen.style.StylePage;
import benchpace.web.screen.style.StylePage.Group;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The whole screens that the page of the look shows, each page being the very one that devices get. */
final class StyleScreens {
    private static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "");
    private static final Viewer HELPER = new Viewer(Role.HELPER, "MO");

    private final Screens screens;

    StyleScreens(Screens screens) {
        this.screens = screens;
    }

    StylePage of(StyleGiven given, Viewer viewer) {
        List<Situation> situations = given.situations();
        List<Excerpt> table = of(ScreenKind.INSTRUCTOR, LEAD, situations);
        return StylePage.of(given, viewer.role(), table.get(0), List.of(
                new Group("wall", "The wall", "Read from five metres, by guests.",
                        of(ScreenKind.WALL, Viewer.GUEST, situations)),
                new Group("table", "The table", "Read in two seconds, tapped with waxy fingers.", table),
                new Group("phones", "Helpers' phones", "In one hand, between two seats.",
                        of(ScreenKind.HELPER, HELPER, situations.stream()
                                .filter(s -> !s.view().help().isEmpty() || s.view().cure().poured() > 0).toList())),
                new Group("guests", "Guests' phones", "One button, and nobody else's business.", guests(situations)),
                new Group("waits", "The wait", "Who does what while candles set.", of(ScreenKind.WAIT, LEAD, situations
                        .stream().filter(s -> s.view().cure().poured() > 0).toList())),
                new Group("paper", "On paper", "Cut out, folded, tied to a candle.", List.of(Excerpt.of("Tags",
                        screens.tags(given.tags(), "", false, viewer), "")))));
    }

    private List<Excerpt> of(ScreenKind kind, Viewer viewer, List<Situation> situations) {
        return situations.stream().map(s -> Excerpt.of(s.name(), screens.page(kind, s.view(), viewer),
                s.view().now().toString())).toList();
    }

    /** Each thing that a guest's phone can say, once. */
    private List<Excerpt> guests(List<Situation> situations) {
        Set<String> said = new HashSet<>();
        List<Excerpt> all = new ArrayList<>();
        for (Situation situation : situations) {
            ClassView view = situation.view();
            view.seats().forEach(seat -> {
                GuestPage page = GuestPage.of(view, seat.seat(), "code");
                if (said.add(page.sentence().replaceAll("\\d+", "0"))) {
                    all.add(Excerpt.of(page.heading(), screens.guest(page), view.now().toString()));
                }
            });
        }
        return all;
    }
}
