package benchpace.web.playback;

import benchpace.board.Watched;
import benchpace.board.view.Playing;
import benchpace.web.request.QrCode;
import benchpace.web.screen.playback.PlaybackBand;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.StartView;
import benchpace.words.PlaybackWords;
import benchpace.words.Times;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What marks the screens of evenings that are played back, for each who looks. */
public final class Bands {
    private final Supplier<String> reachable;
    private final ZoneId zone;

    /** @param reachable the address of the board that phones on the same network can reach */
    public Bands(Supplier<String> reachable, ZoneId zone) {
        this.reachable = reachable;
        this.zone = zone;
    }

    /** Empty for a class. */
    public Optional<PlaybackBand> of(Watched watched, ScreenKind kind, Viewer viewer) {
        return watched.playing().map(playing -> {
            boolean controls = kind != ScreenKind.WALL && mayMove(viewer, playing);
            String when = PlaybackWords.when(watched.live().startsAt(), new Times(zone));
            String lookBack = playing.classId().filter(id -> viewer.instructor())
                    .map(id -> "/classes/" + id + "/report").orElse("");
            return new PlaybackBand(watched.id(), when, playing, controls, lookBack,
                    controls ? joins(watched.id()) : List.of());
        });
    }

    /** The instructor moves all along; a helper what was opened on that phone. */
    static boolean mayMove(Viewer viewer, Playing playing) {
        return viewer.instructor() || viewer.role().staff() && viewer.device().equals(playing.opener());
    }

    private List<PlaybackBand.Join> joins(String id) {
        return List.of(join("The wall, without pairing", id, ScreenKind.WALL),
                join("A helper's phone that is paired", id, ScreenKind.HELPER));
    }

    private PlaybackBand.Join join(String words, String id, ScreenKind kind) {
        String url = reachable.get() + "classes/" + id + "/" + kind.token();
        StartView.Link link = new StartView.Link(url, QrCode.modules(url));
        return new PlaybackBand.Join(words, url, link.path(), link.viewBox());
    }
}
