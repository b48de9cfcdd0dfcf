package benchpace.web.screen.shell;

import benchpace.board.view.ClassView;
import benchpace.words.Times;
import java.util.Comparator;
import java.util.List;

/** A remark, in one line. @param about "Seat 4", or "Class" */
public record NoteLine(String about, String at, String text, long seq) {

    public static List<NoteLine> latest(List<ClassView.NoteView> notes, int most, Times times) {
        return notes.stream().sorted(Comparator.comparingLong(ClassView.NoteView::seq).reversed()).limit(most)
                .map(n -> new NoteLine(n.seat().map(s -> "Seat " + s).orElse("Class"), times.clock(n.at()), n.text(),
                        n.seq()))
                .toList();
    }
}
