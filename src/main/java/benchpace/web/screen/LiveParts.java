package benchpace.web.screen;

import benchpace.board.attempt.Faults;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.web.screen.helper.HelpList;
import benchpace.web.screen.helper.HelperRow;
import benchpace.web.screen.instructor.GuestsPanel;
import benchpace.web.screen.instructor.HomeLine;
import benchpace.web.screen.instructor.InstructorPage;
import benchpace.web.screen.instructor.LinesChart;
import benchpace.web.screen.instructor.MiddlePanel;
import benchpace.web.screen.instructor.NextPanel;
import benchpace.web.screen.instructor.NowPanel;
import benchpace.web.screen.instructor.RoomPanel;
import benchpace.web.screen.instructor.SeatTile;
import benchpace.web.screen.shell.Carried;
import benchpace.web.screen.shell.NoteLine;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.UndoButton;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.Unfinished;
import benchpace.web.screen.wait.WaitChart;
import benchpace.web.screen.wait.WaitLine;
import benchpace.web.screen.wait.WaitPage;
import benchpace.web.screen.wall.WallCalls;
import benchpace.web.screen.wall.WallMain;
import benchpace.web.screen.wall.WallRail;
import benchpace.web.screen.wall.WallSeats;
import benchpace.words.Times;

/**
 * The parts of a page that change while a class runs, each rendered by itself: one that fails fails alone. Most come
 * with the first breath of a tap: what it changed, and whatever else is told in words beside it, so that a page never
 * contradicts itself. Drawings of what was computed, and what a page keeps until it is asked, wait for the second.
 */
public final class LiveParts {
    private final Templates templates;
    private final Faults faults;

    LiveParts(Templates templates, Faults faults) {
        this.templates = templates;
        this.faults = faults;
    }

    /** All of them. */
    Parts of(ScreenKind kind, ClassView view, Viewer viewer) {
        Parts parts = new Parts(view.id(), faults);
        atOnce(parts, kind, view, viewer);
        whenComputed(parts, kind, view);
        own(parts, kind, view, viewer);
        return parts;
    }

    /** Those that all see alike who are shown the same. @param all or only those that come at once */
    public Parts shared(ScreenKind kind, ClassView view, Viewer viewer, boolean all) {
        Parts parts = new Parts(view.id(), faults);
        atOnce(parts, kind, view, viewer.amongMany(view));
        if (all) {
            whenComputed(parts, kind, view);
        }
        return parts;
    }

    /** Those of one device alone; they come at once. */
    public Parts own(ScreenKind kind, ClassView view, Viewer viewer) {
        Parts parts = new Parts(view.id(), faults);
        own(parts, kind, view, viewer);
        return parts;
    }

    private void atOnce(Parts parts, ScreenKind kind, ClassView view, Viewer viewer) {
        Times times = new Times(view.zone());
        switch (kind) {
            case INSTRUCTOR -> instructor(parts, view, viewer, times);
            case HELPER -> helper(parts, view, viewer, times);
            case WALL -> wall(parts, view, times);
            case WAIT -> {
                parts.add("wait-calls", () -> render("wait/calls.jte", WaitPage.calls(view, times)));
                parts.add("wait-notes", () -> render("wait/notes.jte", WaitPage.notes(view, times)));
                parts.add("wait-cards", () -> render("wait/cards.jte", WaitPage.cards(view, viewer, times)));
            }
        }
    }

    private void whenComputed(Parts parts, ScreenKind kind, ClassView view) {
        Times times = new Times(view.zone());
        if (kind == ScreenKind.INSTRUCTOR) {
            parts.addQuietly("plan-steps", () -> render("instructor/carried.jte", Carried.of(view).steps()));
            parts.addQuietly("known", () -> render("instructor/carried.jte", Carried.of(view).known()));
            parts.add("next-ask", () -> render("instructor/next-ask.jte", NextPanel.of(view)));
            parts.add("close-ask", () -> render("instructor/close-ask.jte", Unfinished.words(view)));
            parts.add("fit", () -> render("instructor/fit.jte", RoomPanel.of(view, times)));
            parts.add("lines", () -> render("instructor/lines.jte", LinesChart.of(view, times)));
        } else if (kind == ScreenKind.WAIT) {
            parts.add("wait-chart", () -> WaitChart.of(view, times).map(c -> render("wait/chart.jte", c))
                    .orElseGet(() -> render("wait/empty.jte", WaitPage.empty(view))));
        }
    }

    private void own(Parts parts, ScreenKind kind, ClassView view, Viewer viewer) {
        if (kind == ScreenKind.INSTRUCTOR || kind == ScreenKind.WAIT) {
            parts.add("undo", () -> viewer.instructor() ? render("instructor/undo.jte",
                    UndoButton.of(view, viewer, new Times(view.zone()))) : "");
        }
    }

    private void instructor(Parts parts, ClassView view, Viewer viewer, Times times) {
        for (SeatView seat : view.seats()) {
            parts.add("seat-" + seat.seat(), () -> render("instructor/seat-tile.jte", SeatTile.of(seat, view, times)));
        }
        parts.add("now", () -> render("instructor/now.jte", NowPanel.of(view, times)));
        parts.add("middle", () -> render("instructor/middle.jte", MiddlePanel.of(view, times)));
        parts.add("warmth", () -> render("instructor/warmth.jte", RoomPanel.of(view, times)));
        parts.add("help", () -> render("instructor/help.jte", HelpList.of(view, viewer, times,
                InstructorPage.cards(view))));
        parts.add("next", () -> render("instructor/next.jte", NextPanel.of(view)));
        parts.add("home", () -> render("instructor/home.jte", HomeLine.of(view, times)));
        parts.add("wait", () -> render("instructor/wait.jte", WaitLine.of(view, times)));
        parts.add("guests", () -> render("instructor/guests.jte", GuestsPanel.of(view)));
        parts.add("notes", () -> render("instructor/notes.jte",
                NoteLine.latest(view.notes(), InstructorPage.NOTES, times)));
    }

    private void helper(Parts parts, ClassView view, Viewer viewer, Times times) {
        parts.add("now", () -> render("helper/now.jte", NowPanel.of(view, times)));
        parts.add("help", () -> render("helper/help.jte", HelpList.of(view, viewer, times, view.seats().size())));
        parts.add("not-done", () -> render("helper/not-done.jte", HelperRow.notDone(view, viewer, times)));
        parts.add("seats", () -> render("helper/seats.jte", HelperRow.all(view, viewer, times)));
    }

    /** Guests are told nothing of what they would not miss: a part that fails is not there. */
    private void wall(Parts parts, ClassView view, Times times) {
        parts.addQuietly("wall-main", () -> render("wall/main.jte", WallMain.of(view, times)));
        parts.addQuietly("wall-seats", () -> render("wall/seats.jte", WallSeats.of(view, times)));
        parts.addQuietly("wall-wait", () -> render("wall/wait.jte", WallCalls.of(view, times)));
        parts.addQuietly("wall-rail", () -> render("wall/rail.jte", WallRail.of(view)));
    }

    private String render(String template, Object of) {
        return templates.render(template, of);
    }
}
