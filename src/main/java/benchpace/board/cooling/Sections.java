package benchpace.board.cooling;

import benchpace.cure.CoolingCase;
import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.CureMilestones;
import benchpace.cure.solver.CureSolver;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.LongSupplier;

/**
 * Keeps the drawings of the cases met lately, one for every minute, so that a minute's passing costs a look-up. What
 * views ask for with every minute stays, however many candles are looked at.
 */
final class Sections {
    /** So many stay however long nobody asked for them. */
    private static final int KEPT_LONG = 24;
    /** More candles, each of its own kind, than are looked at within a few minutes. */
    private static final int MOST_CASES = 400;
    private static final long LATELY = TimeUnit.MINUTES.toNanos(3);
    /** Ten hours: longer than any class, and than anybody looks. */
    private static final double LONGEST_MINUTES = 600;
    /** The room's loss is rounded to two per cent, finer than any drawing shows. */
    private static final double LOG_LOSS_STEP = 0.02;

    private final Function<CoolingCase, List<CandleSection>> solved;
    private final LongSupplier nanos;
    /** The one asked for last is the last. */
    private final Map<CoolingCase, Kept> kept = new LinkedHashMap<>();

    private record Kept(List<CandleSection> sections, long askedAt) { }

    Sections() {
        this(Sections::all, System::nanoTime);
    }

    /** @param nanos a clock that only ever goes on */
    Sections(Function<CoolingCase, List<CandleSection>> solved, LongSupplier nanos) {
        this.solved = solved;
        this.nanos = nanos;
    }

    /** The section at the last whole minute. @param minutes from the pour; beyond the last drawing that one stands */
    synchronized CandleSection at(CoolingCase computed, double lossTimes, double minutes) {
        double loss = Math.exp(Math.rint(Math.log(lossTimes) / LOG_LOSS_STEP) * LOG_LOSS_STEP);
        CoolingCase c = computed.withLossTimes(loss);
        Kept known = kept.remove(c);
        List<CandleSection> sections = known == null ? solved.apply(c) : known.sections();
        kept.put(c, new Kept(sections, nanos.getAsLong()));
        letGo();
        return sections.get((int) Math.min(minutes, sections.size() - 1));
    }

    /** How many cases are kept. */
    synchronized int size() {
        return kept.size();
    }

    private void letGo() {
        long now = nanos.getAsLong();
        var eldest = kept.values().iterator();
        while (kept.size() > KEPT_LONG && (now - eldest.next().askedAt() > LATELY || kept.size() > MOST_CASES)) {
            eldest.remove();
        }
    }

    private static List<CandleSection> all(CoolingCase c) {
        CureMilestones found = CureSolver.solve(c).milestones();
        double set = found.setMinutes().orElse(LONGEST_MINUTES);
        return CandleSection.everyMinute(c, 0, (int) Math.ceil(Math.min(set, LONGEST_MINUTES)));
    }
}
