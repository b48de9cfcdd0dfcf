package benchpace.words;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.Observation;
import benchpace.board.cooling.ReadyWindow.Basis;
import benchpace.board.cooling.SaidRange;
import benchpace.board.cooling.SaidRange.Phase;
import benchpace.board.view.ClassView;
import java.time.Instant;
import java.util.Optional;

/**
 * All that screens say of when candles are ready, on what it rests and who decides. Everything here goes by what is
 * said of a candle ({@link CandleClock#said}), never by what was computed: before its range "ready about 20:10 to
 * 20:25", with minutes only up to the range's beginning; inside it "may be ready now: try by hand"; past it "try it".
 */
public final class CureWords {
    static final String DECIDES = "The instructor's hand test decides.";
    /** Where both have to stand on one line of the wall. */
    private static final String DECIDES_BESIDE_NEWS = "The hand test decides.";
    public static final String MAY_BE = "may be ready";
    public static final String MAY_BE_NOW = "may be ready now: try by hand";
    public static final String TRY_IT = "try it";

    private CureWords() { }

    /** "ready about 20:10 to 20:25", "may be ready now: try by hand", "try it"; of a candle no hand has decided on. */
    public static String of(SaidRange range, Instant now, Times times) {
        return switch (range.phase(now)) {
            case BEFORE -> "ready about " + times.said(range);
            case INSIDE -> MAY_BE_NOW;
            case PAST -> TRY_IT;
        };
    }

    /** "Poured at 19:20, ready about 20:10 to 20:25." */
    public static String of(CandleClock candle, Instant now, Times times) {
        return "Poured at " + times.clock(candle.pouredAt()) + ", " + stands(candle, now, times) + ".";
    }

    /** "ready about 20:10 to 20:25", "was to be ready about ...", "judged set at 20:14". */
    public static String stands(CandleClock candle, Instant now, Times times) {
        if (candle.settled()) {
            return candle.judgedSetAt().map(at -> "judged set at " + times.clock(at))
                    .orElseGet(() -> "in hand since " + times.clock(candle.said().from()));
        }
        return (candle.tryIt(now) ? "was to be ready about " : "ready about ") + times.said(candle.said());
    }

    /**
     * All candles together, those aside that a hand has decided on, with what is to be done; empty if none is waited
     * for.
     */
    public static String all(ClassView view, Times times) {
        ClassView.CureView cure = view.cure();
        return cure.range().map(range -> switch (range.phase(view.now())) {
            case BEFORE -> range(cure, range, times);
            case INSIDE -> (cure.alike() ? "They may" : "Some may") + " be ready now: try by hand"
                    + by(range, cure.allPoured(), times);
            case PAST -> "Try them by hand";
        }).orElse("");
    }

    /** Of the whole class; of candles still to be poured nobody can say when the last one is ready. */
    public static String range(ClassView.CureView cure, SaidRange range, Times times) {
        return Phrases.sentence(range(range, cure.alike(), cure.allPoured(), times));
    }

    /**
     * "ready about 20:10 to 20:25" where all are said to be ready then, else "first from about 20:10, all by about
     * 20:45".
     *
     * @param all whether it can be said of the last one, too
     */
    private static String range(SaidRange range, boolean alike, boolean all, Times times) {
        return alike && all ? "ready about " + times.said(range)
                : "first from about " + times.clock(range.from()) + by(range, all, times);
    }

    private static String by(SaidRange range, boolean all, Times times) {
        return all ? ", all by about " + times.clock(range.until()) : "";
    }

    /** "Seats 3 and 4 are still setting, ready about 21:10 to 21:25."; empty for none. */
    public static String setting(ClassView.CureView cure, Times times) {
        return cure.setting().map(setting -> SeatWords.that(setting.seats(), " is", " are") + " still setting, "
                + range(setting.range(), setting.alike(), true, times) + ".").orElse("");
    }

    /** "Seats 1 and 2 have not been tried by hand yet." Of those whose range has begun; empty for none. */
    public static String untried(ClassView.CureView cure) {
        return cure.untried().isEmpty() ? ""
                : SeatWords.that(cure.untried(), " has", " have") + " not been tried by hand yet.";
    }

    public static String basis(ClassView.CureView cure) {
        Optional<Basis> basis = cure.range().map(SaidRange::basis);
        return basis.isEmpty() ? cure.poured() == 0 ? "" : DECIDES
                : (basis.get() == Basis.PLAN_FIGURE ? "The plan's figure, an estimate. " : "Computed for this room. ")
                        + DECIDES;
    }

    /** Why the band on the wall has just moved: "Measured at seat 3."; empty if it has not. */
    public static String moved(ClassView view) {
        return view.room().refit().filter(r -> r.isNews(view.now())).map(r -> Phrases.sentence(moved(r.seen())) + ".")
                .orElse("");
    }

    private static String moved(Observation seen) {
        String where = seen.seat().map(s -> " at seat " + s).orElse("");
        return switch (seen.kind()) {
            case ROOM -> "the room was measured";
            case POUR -> "the pour was measured";
            case SURFACE -> "measured" + where;
            case SKIN -> "a skin was seen" + where;
            case JUDGED_SET -> "tried" + where;
        };
    }

    /** For the wall, where every letter is a hand high: who decides, after {@link #moved} or on what it rests. */
    public static String wall(ClassView view) {
        return moved(view).isEmpty() ? wall(view.cure(), view.now()) : DECIDES_BESIDE_NEWS;
    }

    private static String wall(ClassView.CureView cure, Instant now) {
        if (cure.range().filter(r -> r.phase(now) != Phase.PAST).isEmpty()) {
            return DECIDES;
        }
        boolean plan = cure.range().filter(r -> r.basis() == Basis.PLAN_FIGURE).isPresent();
        return (plan ? "The plan's figure. " : "An estimate. ") + DECIDES;
    }

    /** A candle by its number, for who cannot see its drawing: "Seat 3: setting, ready about 20:00 to 20:20". */
    public static String ofSeat(int seat, Optional<CandleClock> candle, Instant now, Times times) {
        return "Seat " + seat + ": " + candle.map(c -> c.settled() ? "tried by hand"
                : (c.stillSets(now) ? "setting, " : "") + of(c.said(), now, times)).orElse("not poured yet");
    }

    public static String basis(CandleClock candle) {
        return switch (candle.ready().basis()) {
            case PLAN_FIGURE -> "The plan's figure, an estimate. " + DECIDES;
            case COMPUTED -> "Computed for this candle and room, an estimate. " + DECIDES;
            case HAND_TEST -> "By hand.";
        };
    }
}
