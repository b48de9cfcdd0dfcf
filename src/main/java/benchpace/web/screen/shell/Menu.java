package benchpace.web.screen.shell;

import java.util.ArrayList;
import java.util.List;

/**
 * The doors of a screen, in words: the other screens of its class, the rest of the board, and what opens on this one.
 *
 * @param screens of the class, the one that is looked at among them
 * @param further outside the class
 * @param dialogs what opens over this screen
 */
public record Menu(List<Entry> screens, List<Entry> further, List<Entry> dialogs) {

    private static final String PREP = "prep";

    /**
     * One door.
     *
     * @param hint  what is behind it
     * @param opens an address, or the id of a dialogue of this page
     * @param here  it is the screen that is looked at
     * @param apart it opens beside this screen: what nobody here touches
     */
    public record Entry(String words, String hint, String opens, boolean here, boolean apart) { }

    /** @param shell of the screen it belongs to */
    public static Menu of(Shell shell) {
        boolean instructor = shell.role().equals(Role.INSTRUCTOR.token());
        String of = "/classes/" + shell.classId() + "/";
        List<Entry> screens = new ArrayList<>();
        if (instructor) {
            screens.add(to(shell, ScreenKind.INSTRUCTOR, "The table", "seats, taps and the next step"));
        }
        boolean played = shell.playback().isPresent();
        if (!played) {
            screens.add(new Entry("Prep", "what to melt, lay out and buy", of + PREP, shell.screen().equals(PREP),
                    false));
        }
        screens.add(to(shell, ScreenKind.HELPER, "Helper's phone", "who needs somebody"));
        screens.add(new Entry("Wall", "what the television shows", of + ScreenKind.WALL.token(), false, true));
        screens.add(to(shell, ScreenKind.WAIT, "The wait", "what opens when, and for whom"));
        List<Entry> further = new ArrayList<>();
        shell.playback().filter(band -> !band.lookBack().isEmpty()).ifPresent(band ->
                screens.add(new Entry("Look back", "what held the class", band.lookBack(), false, false)));
        if (instructor && !played) {
            screens.add(new Entry("Look back", "what held the class", of + "report", false, false));
            further.add(new Entry("Seats and names", "add a seat, correct a guest, print cards", of + "setup", false,
                    false));
            further.add(new Entry("Calendar file", "the steps of this class", of + "calendar.ics", false, false));
        }
        further.add(new Entry("Pickup shelf", "candles left for later", "/shelf", false, false));
        if (instructor) {
            further.add(new Entry("History", "past classes, and what they show together", "/history", false, false));
            further.add(new Entry("Studio", "its name, place and colour", "/studio", false, false));
            further.add(new Entry("Devices", "who is let in, and signing out", "/devices", false, false));
        }
        further.add(new Entry("Start", "all classes, and who joins", "/", false, false));
        return new Menu(List.copyOf(screens), List.copyOf(further), dialogs(shell));
    }

    private static Entry to(Shell shell, ScreenKind kind, String words, String hint) {
        return new Entry(words, hint, "/classes/" + shell.classId() + "/" + kind.token(),
                shell.screen().equals(kind.token()), false);
    }

    private static List<Entry> dialogs(Shell shell) {
        if (shell.screen().equals(PREP)) {
            return List.of();
        }
        if (shell.playback().isPresent()) {
            return shell.playback().get().controls() ? List.of(new Entry("Other screens",
                    "this evening on a wall or a phone", "playback-dialog", false, false)) : List.of();
        }
        Entry chime = new Entry("Chime", "when a seat falls behind", "chime-dialog", false, false);
        return !shell.screen().equals(ScreenKind.INSTRUCTOR.token()) ? List.of(chime)
                : List.of(new Entry("Guests' codes", "they say themselves that they are done", "guests-dialog", false,
                        false), chime, new Entry("Keys", "the table by keyboard", "keys-dialog", false, false));
    }
}
