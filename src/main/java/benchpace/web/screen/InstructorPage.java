package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.plan.SeatingChart;
import java.util.List;

/**
 * All that the instructor's screen shows at first.
 *
 * @param place  where the class is, and on which day if that is not today
 * @param layout {@code beside} the table for narrow tables, {@code wide} or {@code folded} for large ones
 * @param lines  the pace lines, and where there is room for them
 * @param unfinished what closing the class now would leave undone, in words; empty if nothing
 */
public record InstructorPage(Shell shell, String name, String place, String classId, String layout, int columns,
                             int rows, List<SeatingChart.Block> tables, List<SeatPlace> places, NowPanel now,
                             HelpList help, NextPanel next, WaitLine waiting, HomeLine home, UndoButton undo,
                             List<NoteLine> notes, RoomPanel warmth, LinesPlace linesPlace, LinesChart lines,
                             GuestsPanel guests, String unfinished, Carried carried) {
    private static final int BESIDE = 7;
    private static final int DRAWN = 12;
    static final int NOTES = 3;

    /** How many cards of seats that need somebody fit beside the cue without scrolling: fewer if there is a caution. */
    static int cards(ClassView view) {
        return view.present().caution().isEmpty() ? 2 : 1;
    }

    static InstructorPage of(Shell shell, ClassView view, Viewer viewer, Times times) {
        SeatingChart chart = view.chart();
        String layout = layout(view);
        List<SeatPlace> places = view.seats().stream()
                .map(s -> new SeatPlace(s.place().column(), s.place().row(), SeatTile.of(s, view, times)))
                .toList();
        return new InstructorPage(shell, view.name(), place(view, times), view.id(), layout, chart.columns(),
                chart.rows(),
                layout.equals("folded") ? List.of() : chart.tables(), places, NowPanel.of(view, times),
                HelpList.of(view, viewer, times, cards(view)), NextPanel.of(view),
                WaitLine.of(view, times), HomeLine.of(view, times),
                UndoButton.of(view, viewer, times), NoteLine.latest(view.notes(), NOTES, times),
                RoomPanel.of(view, times),
                LinesPlace.of(view), LinesChart.of(view, times), GuestsPanel.of(view),
                Unfinished.words(view), Carried.of(view));
    }

    private static String place(ClassView view, Times times) {
        String day = times.isDayOf(view.startsAt(), view.now()) ? "" : times.date(view.startsAt());
        return day.isEmpty() || view.place().isEmpty() ? day + view.place() : day + ", " + view.place();
    }

    static String layout(ClassView view) {
        int columns = view.chart().columns();
        return columns <= BESIDE && view.seats().size() <= 16 ? "beside" : columns <= DRAWN ? "wide" : "folded";
    }
}
