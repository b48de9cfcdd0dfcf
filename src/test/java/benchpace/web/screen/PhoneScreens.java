package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.plan.Studio;
import benchpace.web.screen.between.BetweenPage;
import benchpace.web.screen.guest.CodeSheet;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.setup.SeatsPage;
import benchpace.web.screen.setup.SetupPage;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.StartView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Guests' phones, their printed codes, the page between two classes and the setting up, to be looked at. */
final class PhoneScreens {
    static final Studio STUDIO = new Studio("The Tallow Loft", "Quay Lane, Marrowby", Optional.empty());
    private static final Studio LONG = new Studio("Kerzenwerkstatt Hinterbühlwald und Lichterzieherei",
            "Quay Lane, Marrowby", Optional.empty());
    private static final Screens NAMELESS = new Screens();
    private static final Screens OURS = new Screens(() -> STUDIO);

    private PhoneScreens() { }

    record Screen(String name, String html, int width, int height) { }

    static List<Screen> all() {
        List<Screen> all = new ArrayList<>();
        guests().forEach((page) -> all.add(page));
        all.add(new Screen("codes", OURS.codes(codes(8)), 1280, 900));
        all.add(new Screen("codes-long", new Screens(() -> LONG).codes(codes(24)), 390, 844));
        all.add(between("between-helper", ScreenKind.HELPER, 390, 844));
        all.add(between("between-table", ScreenKind.INSTRUCTOR, 1280, 800));
        all.add(between("between-wall", ScreenKind.WALL, 1920, 1080));
        for (int width : new int[] {1280, 390}) {
            all.add(new Screen("setup-new-" + width, NAMELESS.setup(setup("")), width, 1100));
            all.add(new Screen("setup-" + width, NAMELESS.setup(setup("evening")), width, 1100));
            all.add(new Screen("seats-" + width, NAMELESS.seats(seats()), width, 1100));
            all.add(new Screen("start-none-" + width, NAMELESS.start(start(Role.INSTRUCTOR, List.of())), width, 900));
            all.add(new Screen("start-stranger-" + width, OURS.start(ScreenGallery.start(Optional.empty())), width,
                    900));
            all.add(new Screen("start-helper-" + width, OURS.start(ScreenGallery.start(Optional.of(Role.HELPER))),
                    width, 900));
        }
        return all;
    }

    private static List<Screen> guests() {
        ClassView before = Evenings.cure().event(-2, new ClassEvent.GuestsMayTell(true)).view(-1);
        ClassView sets = Evenings.cure().event(-2, new ClassEvent.GuestsMayTell(true)).view(60);
        ClassView over = Evenings.over().view(130);
        return List.of(guest(OURS, "studio", Evenings.asks().view(14), 4), guest(new Screens(() -> LONG), "long",
                Evenings.asks().view(14), 4), guest(OURS, "heard", Evenings.asks().view(16), 5),
                guest(OURS, "sets", sets, 4), guest(OURS, "before", before, 4), guest(OURS, "over", over, 4));
    }

    private static Screen guest(Screens screens, String name, ClassView view, int seat) {
        return new Screen("guest-" + name, screens.guest(GuestPage.of(view, seat, "code")), 390, 844);
    }

    private static CodeSheet codes(int seats) {
        return new CodeSheet("Evening pour", "evening", true, IntStream.rangeClosed(1, seats)
                .mapToObj(n -> new CodeSheet.Card(n, ScreenGallery.start(Optional.empty()).join())).toList());
    }

    private static Screen between(String name, ScreenKind kind, int width, int height) {
        Viewer viewer = kind == ScreenKind.WALL ? Viewer.GUEST : new Viewer(Role.HELPER, "MO");
        BetweenPage page = BetweenPage.of(kind, viewer, Following.NOTHING,
                Optional.of(new BetweenPage.Told("Table of six", Evening.at(4000), false)),
                Optional.of(new BetweenPage.Told("Evening pour", Evening.START, true)), Evening.at(130), Evening.ZONE);
        return new Screen(name, OURS.between(page), width, height);
    }

    private static StartView start(Role role, List<StartView.ClassRow> classes) {
        StartView of = ScreenGallery.start(Optional.of(role));
        return new StartView(of.role(), "", classes, of.plans(), of.join(), of.byName(), of.helpers(), "", "");
    }

    private static SetupPage setup(String id) {
        Shell shell = new Shell("Set up", "setup", List.of("seating"), "", "", "UTC", "instructor", "");
        String plans = "{\"\":{\"name\":\"\",\"candles\":[],\"promise\":\"Left empty: 21:00.\"}}";
        String carried = "{\"plans\":" + plans + ",\"roster\":[]}";
        return new SetupPage(shell, id, List.of(new SetupPage.Choice("", "Evening pour, 8 seats")), "", "Evening pour",
                "2027-03-04T19:00", "", "Europe/Oslo", "The Tallow Loft, Quay Lane, Marrowby", 8, "long-table",
                "clockwise-from-left", "1", carried);
    }

    private static SeatsPage seats() {
        Shell shell = new Shell("Seats and names", "seats", List.of(), "", "", "UTC", "instructor", "");
        return new SeatsPage(shell, "evening", "Evening pour", false, IntStream.rangeClosed(1, 8)
                .mapToObj(n -> new SeatsPage.Row(n, n % 3 == 0 ? "" : "Ida", "", n == 4 ? "nuts" : "", n < 3)).toList(),
                9, List.of());
    }
}
