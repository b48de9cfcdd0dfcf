package benchpace.words;

import benchpace.board.attempt.Model;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import java.util.List;
import java.util.Optional;

/** Says what a helper reads when nobody needs them. */
public final class CalmWords {
    private CalmWords() { }

    /** "Nobody needs you. Seat 4 has been longest at Wicks." Empty if somebody needs them. */
    public static String of(ClassView view) {
        if (view.seats().stream().anyMatch(s -> s.flag().isPresent())) {
            return "";
        }
        if (view.missing().has(Model.PACE) || view.missing().has(Model.WORDS)) {
            return "Who needs somebody is not known just now.";
        }
        List<String> eased = view.seats().stream().map(SeatView::eased).flatMap(Optional::stream)
                .map(e -> FlagWords.eased(e, view.zone())).toList();
        return eased.isEmpty() ? "Nobody needs you." + view.longest()
                .map(l -> " Seat " + l.seat() + " has been longest at " + l.step() + ".").orElse("")
                : String.join(" ", eased);
    }
}
