package benchpace.web.screen.helper;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.web.screen.instructor.SeatTile;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One seat in the helper's lists. @param claimable somebody may say "I've got it" */
public record HelperRow(SeatTile tile, String helper, boolean mine, boolean claimable) {

    /**
     * The seats that are not done with their step and are not in the list above, longest first; behind them those that
     * wait for their turn at it.
     */
    public static List<HelperRow> notDone(ClassView view, Viewer viewer, Times times) {
        List<Integer> listed = view.help().stream().map(ClassView.HelpView::seat).toList();
        return view.seats().stream()
                .filter(s -> s.canFinish() && s.counts() && !listed.contains(s.seat()))
                .sorted(Comparator.comparing((SeatView s) -> s.before().map(b -> b + 1).orElse(0))
                        .thenComparing(SeatView::countFrom).thenComparing(SeatView::seat))
                .map(s -> of(s, view, viewer, times))
                .toList();
    }

    public static List<HelperRow> all(ClassView view, Viewer viewer, Times times) {
        return view.seats().stream().map(s -> of(s, view, viewer, times)).toList();
    }

    /** Whether it waits for its turn at its step. */
    public boolean waitsItsTurn() {
        return tile.mark().equals(SeatView.Mark.QUEUED.token());
    }

    private static HelperRow of(SeatView seat, ClassView view, Viewer viewer, Times times) {
        Optional<String> helper = seat.helper();
        return new HelperRow(SeatTile.of(seat, view, times), helper.orElse(""),
                helper.filter(h -> !h.isEmpty() && h.equals(viewer.initials())).isPresent(),
                helper.isEmpty() && seat.counts() && view.stage() != ClassView.Stage.CLOSED);
    }
}
