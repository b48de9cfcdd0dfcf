package benchpace.web.screen.instructor;

import benchpace.board.view.ClassView;
import benchpace.plan.SeatingChart;
import benchpace.plan.Studio;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.UndoButton;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that the instructor's screen shows at first.
 *
 * @param place  whose room it is and where the class is held, if that is not there, and on which day if not today
 * @param layout {@code beside} the table for narrow tables, {@code wide} or {@code folded} for large ones
 * @param linesPlace where there is room for the pace lines
 * @param parts  the live parts, as the stream sends them later
 */
public record InstructorPage(Shell shell, String name, String place, String classId, String layout, int columns,
                             int rows, List<SeatingChart.Block> tables, List<SeatPlace> places, UndoButton undo,
                             RoomPanel warmth, LinesPlace linesPlace, Parts parts) {
    private static final int BESIDE = 7;
    private static final int DRAWN = 12;
    public static final int NOTES = 3;

    /** How many cards of seats that need somebody fit beside the cue without scrolling: fewer if there is a caution. */
    public static int cards(ClassView view) {
        return view.present().caution().isEmpty() ? 2 : 1;
    }

    /** @param room whose room it is, with the room's own place */
    public static InstructorPage of(Shell shell, Studio room, ClassView view, Viewer viewer, Times times, Parts parts) {
        SeatingChart chart = view.chart();
        String layout = layout(view);
        List<SeatPlace> places = view.seats().stream()
                .map(s -> new SeatPlace(s.place().column(), s.place().row(), s.seat())).toList();
        return new InstructorPage(shell, view.name(), place(room, view, times), view.id(), layout,
                chart.columns(), chart.rows(), layout.equals("folded") ? List.of() : chart.tables(), places,
                UndoButton.of(view, viewer, times), RoomPanel.of(view, times), LinesPlace.of(view), parts);
    }

    /** Whether what the step says of itself stands on the one table there is; else in a strip before them all. */
    public boolean middleOnTable() {
        return tables.size() == 1 || tables.size() > 1 && tables.get(0).columns() == columns - 2;
    }

    /** The first is the largest: the table itself, or the back of a horseshoe. */
    public boolean carriesMiddle(SeatingChart.Block table) {
        return middleOnTable() && table.equals(tables.get(0));
    }

    private static String place(Studio room, ClassView view, Times times) {
        String day = times.isDayOf(view.startsAt(), view.now()) ? "" : times.date(view.startsAt());
        String held = room.heldAt(view.place()).place();
        return Stream.of(day, room.name(), !room.name().isEmpty() && held.equals(room.place()) ? "" : held)
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    static String layout(ClassView view) {
        int columns = view.chart().columns();
        return columns <= BESIDE && view.seats().size() <= 16 ? "beside" : columns <= DRAWN ? "wide" : "folded";
    }
}
