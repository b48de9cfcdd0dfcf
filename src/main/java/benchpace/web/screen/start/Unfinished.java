package benchpace.web.screen.start;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.StepKind;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What would be left undone if the class were closed now. A seat is told of once, with what lies furthest back. */
public final class Unfinished {
    private static final int MOST_SEATS = 12;
    /** More steps than these are not told apart. */
    private static final int MOST_STEPS = 2;

    private Unfinished() { }

    /** "Seats 1 and 2 are still setting, until about 20:45; seat 3 has not poured." Empty if everybody is done. */
    public static String words(ClassView view) {
        if (view.stage() == ClassView.Stage.CLOSED) {
            return "";
        }
        List<String> told = new ArrayList<>();
        List<SeatView> here = view.seats().stream()
                .filter(s -> s.counts() && s.mark() != SeatView.Mark.DONE).toList();
        boolean pours = view.steps().stream().anyMatch(s -> s.kind() == StepKind.POUR);
        List<SeatView> dry = here.stream().filter(s -> pours && s.pouredAt().isEmpty()).toList();
        if (!dry.isEmpty()) {
            told.add(seats(dry) + (dry.size() == 1 ? " has" : " have") + " not poured");
        }
        String setting = CureWords.setting(view.cure(), new Times(view.zone()));
        if (!setting.isEmpty()) {
            told.add(uncapitalized(setting.substring(0, setting.length() - 1)));
        }
        List<SeatView> untried = here.stream().filter(s -> !tried(s, view)
                && s.candle().orElseThrow().mayBeReady(view.now())).toList();
        if (!untried.isEmpty()) {
            told.add(seats(untried) + (untried.size() == 1 ? " has" : " have") + " not been tried by hand");
        }
        told.addAll(steps(here.stream().filter(s -> !dry.contains(s) && s.canFinish() && tried(s, view)).toList()));
        return told.isEmpty() ? "" : Phrases.sentence(String.join("; ", told)) + ".";
    }

    /** Judged, or in hand since: nobody trims a candle that was not tried. A seat without a candle has none to try. */
    private static boolean tried(SeatView seat, ClassView view) {
        return seat.candle().filter(c -> !c.settled()).isEmpty() || view.steps().stream()
                .anyMatch(s -> s.kind() == StepKind.FINISH && seat.finished().contains(s.id()));
    }

    private static List<String> steps(List<SeatView> seats) {
        Map<String, List<SeatView>> byStep = seats.stream()
                .collect(Collectors.groupingBy(SeatView::stepName, LinkedHashMap::new, Collectors.toList()));
        if (byStep.size() > MOST_STEPS) {
            return List.of(seats(seats) + " have steps to do");
        }
        return byStep.entrySet().stream().map(e -> seats(e.getValue()) + (e.getValue().size() == 1 ? " is" : " are")
                + " not done with " + e.getKey()).toList();
    }

    private static String seats(List<SeatView> seats) {
        return Phrases.seats(seats.stream().map(SeatView::seat).toList(), MOST_SEATS);
    }

    private static String uncapitalized(String text) {
        return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
