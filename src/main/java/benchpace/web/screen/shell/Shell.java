package benchpace.web.screen.shell;

import benchpace.plan.Studio;
import benchpace.web.screen.playback.PlaybackBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What frames a page.
 *
 * @param screen  names its style sheet and its script
 * @param sheets  further style sheets
 * @param classId the class it follows; empty for pages that follow none
 * @param now     the board's time, RFC 3339; empty for pages that follow no class
 * @param following the address that it keeps to, where it follows one class after the other
 * @param studio whose room it is
 * @param playback what marks it where an evening is played back; empty elsewhere
 */
public record Shell(String title, String screen, List<String> sheets, String classId, String now, String zone,
                    String role, String initials, Following following, Studio studio,
                    Optional<PlaybackBand> playback) {

    /** A page at an address of its own. */
    public Shell(String title, String screen, List<String> sheets, String classId, String now, String zone, String role,
                 String initials) {
        this(title, screen, sheets, classId, now, zone, role, initials, Following.NOTHING, Studio.NONE,
                Optional.empty());
    }

    /** The same where an evening is played back. */
    public Shell with(Optional<PlaybackBand> band) {
        return new Shell(title, screen, sheets, classId, now, zone, role, initials, following, studio, band);
    }

    /** The same in somebody's room. */
    public Shell at(Studio room) {
        return new Shell(title, screen, sheets, classId, now, zone, role, initials, following, room, playback);
    }

    /** The address of all its style sheets but those of the colours and of paper, which come as one. */
    public String sheet() {
        List<String> all = new ArrayList<>(List.of("base", "drawing"));
        all.addAll(sheets);
        playback.ifPresent(band -> all.add("playback"));
        all.add(screen);
        return "/static/css/" + String.join("+", all) + ".css";
    }

    /** A page that follows no class. */
    static Shell still(String title, Role role) {
        return new Shell(title, "start", List.of(), "", "", "UTC", role.token(), "");
    }

    public boolean live() {
        return !classId.isEmpty();
    }

    /** Whether taps are made on it. */
    public boolean takesTaps() {
        return live() && !screen.equals(ScreenKind.WALL.token());
    }

    /** Whether hands are at work on it, so that it is not simply replaced by another class. */
    public boolean offersOthers() {
        return takesTaps() && !following.address().isEmpty();
    }

    /** What holds of taps by their type alone, for {@code static/js/carried.js}. */
    public String traits() {
        return KnownJson.traits();
    }

    /** Whether a stream tells it what is new: of its class, or which class there is to show. */
    public boolean hears() {
        return live() || !following.address().isEmpty();
    }

    public String stream() {
        return live() ? "/classes/" + classId + "/" + screen + "/stream" : "/api/shown/stream";
    }
}
