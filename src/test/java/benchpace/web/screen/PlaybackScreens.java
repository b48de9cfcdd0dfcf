package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.board.view.Playing;
import benchpace.web.screen.playback.PlaybackBand;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.StartView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Screens of evenings played back, to be looked at. */
final class PlaybackScreens {
    private PlaybackScreens() { }

    /** @param then what is pressed before the picture is taken; may be empty */
    record Screen(String name, String html, int width, int height, String then) { }

    static List<Screen> all(Screens screens) {
        Viewer lead = new Viewer(Role.INSTRUCTOR, "", Evening.TABLET);
        Viewer helper = new Viewer(Role.HELPER, "MO");
        List<Screen> all = new ArrayList<>();
        for (String name : List.of("wicks", "cure", "twenty-four")) {
            ClassView view = name.equals("wicks") ? Evenings.wicks().view(19.5) : Evenings.all().get(name);
            String table = screens.page(ScreenKind.INSTRUCTOR, view, lead, band(view, true));
            all.add(new Screen("tablet-" + name, table, 1280, 800, ""));
            all.add(new Screen("pocket-" + name, table, 390, 844, ""));
            all.add(new Screen("upright-" + name, table, 820, 1180, ""));
            String phone = screens.page(ScreenKind.HELPER, view, helper, band(view, true));
            all.add(new Screen("phone-" + name, phone, 390, 844, ""));
            String wall = screens.page(ScreenKind.WALL, view, Viewer.GUEST, band(view, false));
            all.add(new Screen("wall-" + name, wall, 1920, 1080, ""));
            String wait = screens.page(ScreenKind.WAIT, view, lead, band(view, true));
            all.add(new Screen("wait-" + name, wait, 1280, 800, ""));
        }
        ClassView wicks = Evenings.wicks().view(19.5);
        String table = screens.page(ScreenKind.INSTRUCTOR, wicks, lead, band(wicks, true));
        all.add(new Screen("more", table, 1280, 800, "#playback-more"));
        all.add(new Screen("more-pocket", table, 390, 844, "#playback-more"));
        String watching = screens.page(ScreenKind.HELPER, wicks, helper, band(wicks, false));
        all.add(new Screen("watching", watching, 390, 844, ""));
        return all;
    }

    private static Optional<PlaybackBand> band(ClassView view, boolean controls) {
        StartView.Link link = ScreenGallery.start(Optional.empty()).join();
        Playing playing = new Playing(Optional.of("evening"), "", view.now().minusSeconds(2_000),
                view.now().plusSeconds(5_000), view.now(), 30, true, 3);
        List<PlaybackBand.Join> joins = Stream.of("The wall, without pairing", "A helper's phone that is paired")
                .map(words -> new PlaybackBand.Join(words, link.url(), link.path(), link.viewBox())).toList();
        return Optional.of(new PlaybackBand("played.k3fw", "4 March 2027", playing, controls, "",
                controls ? joins : List.of()));
    }
}
