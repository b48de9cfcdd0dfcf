package benchpace.board.cooling;

import benchpace.cure.CoolingCase;
import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.CureMilestones;
import benchpace.cure.solver.CureSolver;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps the drawings of the cases met lately, one for every minute, so that a minute's passing costs a look-up. */
final class Sections {
    private static final int MOST_CASES = 24;
    /** Ten hours: longer than any class, and than anybody looks. */
    private static final double LONGEST_MINUTES = 600;
    /** The room's loss is rounded to two per cent, finer than any drawing shows. */
    private static final double LOG_LOSS_STEP = 0.02;

    private final Map<CoolingCase, List<CandleSection>> kept = new LinkedHashMap<>(32, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override protected boolean removeEldestEntry(Map.Entry<CoolingCase, List<CandleSection>> eldest) {
            return size() > MOST_CASES;
        }
    };

    /** The section at the last whole minute. @param minutes from the pour; beyond the last drawing that one stands */
    synchronized CandleSection at(CoolingCase computed, double lossTimes, double minutes) {
        double loss = Math.exp(Math.rint(Math.log(lossTimes) / LOG_LOSS_STEP) * LOG_LOSS_STEP);
        List<CandleSection> sections = kept.computeIfAbsent(computed.withLossTimes(loss), Sections::all);
        return sections.get((int) Math.min(minutes, sections.size() - 1));
    }

    private static List<CandleSection> all(CoolingCase c) {
        CureMilestones found = CureSolver.solve(c).milestones();
        double set = found.setMinutes().orElse(LONGEST_MINUTES);
        return CandleSection.everyMinute(c, 0, (int) Math.ceil(Math.min(set, LONGEST_MINUTES)));
    }
}
