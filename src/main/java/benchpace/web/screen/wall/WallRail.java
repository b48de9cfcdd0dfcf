package benchpace.web.screen.wall;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.files.Words;
import benchpace.plan.StepKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where the class is in its evening, along the foot of the wall: a bead for each step of the plan, the present one with
 * its name, and the name of the next.
 *
 * @param present the present step, led or free; empty before the first and after the last
 * @param next    what the next tile that moves on will say, with the word before it; empty after the last
 * @param at      how far along the rail the present step is, or the next where there is none: percent
 */
public record WallRail(List<Bead> beads, String present, String next, int at) {
    /** Height of a line of names, in units of the wall. */
    static final int LINE = 83;
    /** How wide a line is at the most. */
    private static final double ONE_LINE = 1700;
    /** Between the two names. */
    private static final double APART = 60;
    private static final double SIZE = 72;
    private static final String SHORTENED = "\u2026";

    /** How a step stands to the present one. */
    public enum Bead {
        PAST, PRESENT, TO_COME;

        public String token() {
            return Words.of(this);
        }
    }

    public static WallRail of(ClassView view) {
        List<String> ids = view.steps().stream().map(ClassView.StepView::id).toList();
        int last = ids.size() - 1;
        int step = view.present().step().map(s -> ids.indexOf(s.id())).orElse(nothingBegan(view) ? -1 : ids.size());
        int at = WallFinish.isPresent(view) && WallMain.waits(view) ? cureBefore(view, step) : step;
        List<Bead> beads = IntStream.rangeClosed(0, last)
                .mapToObj(i -> i < at ? Bead.PAST : i == at ? Bead.PRESENT : Bead.TO_COME).toList();
        String next = name(view, at + 1).map(n -> (at < 0 ? "first " : "then ") + n).orElse("");
        int stands = Math.max(0, Math.min(last, at));
        return new WallRail(beads, name(view, at).orElse(""), next, last == 0 ? 0 : 100 * stands / last);
    }

    /** Whether the two names take a line each. */
    public boolean wraps() {
        return (Letters.BOLD.width(present) + Letters.PLAIN.width(next)) * SIZE + APART > ONE_LINE;
    }

    /** What the heading still speaks of at a step that nobody can do yet. */
    private static int cureBefore(ClassView view, int step) {
        return IntStream.iterate(step - 1, i -> i >= 0, i -> i - 1)
                .filter(i -> view.steps().get(i).kind() == StepKind.CURE).findFirst().orElse(step);
    }

    private static boolean nothingBegan(ClassView view) {
        return view.stage() == Stage.BEFORE || view.stage() != Stage.CLOSED
                && view.steps().stream().noneMatch(ClassView.StepView::open);
    }

    private static Optional<String> name(ClassView view, int step) {
        return step < 0 || step >= view.steps().size() ? Optional.empty()
                : Optional.of(onOneLine(view.steps().get(step).name()));
    }

    /** The heading and the tablet have it whole: here it gives up words where it would take more than a line. */
    private static String onOneLine(String name) {
        String kept = name;
        while (Letters.BOLD.width("then " + kept + SHORTENED) * SIZE > ONE_LINE && kept.lastIndexOf(' ') > 0) {
            kept = kept.substring(0, kept.lastIndexOf(' '));
        }
        return kept.equals(name) ? name : kept.replaceFirst("[\\s,;:\\-\u2013]+$", "") + SHORTENED;
    }
}
