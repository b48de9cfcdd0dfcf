package benchpace.web.screen.wall;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.ClassView.Stage;
import benchpace.plan.Picture;
import benchpace.plan.StepKind;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Counter;
import benchpace.words.CureWords;
import benchpace.words.Sentences;
import benchpace.words.StageWords;
import benchpace.words.Times;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The large words on the wall. It names no guest and never tells who is slow.
 *
 * @param kicker   one word or name above the heading; mostly empty
 * @param waits    the wait's own layout
 * @param ribbon   in the wait, when the candles should be ready; empty if none is waited for
 * @param count    the ticking time before the class; empty from then on
 * @param dots     how far the table is: one a seat, the done ones first, whoever they are
 * @param progress the same in words
 * @param small    in the wait, one quiet line below
 * @param drawing  of what is done; empty in the wait
 * @param fit      how large the words are; unused in the wait
 * @param namesTheClass whether the class's name is among them
 */
public record WallMain(String kicker, String heading, String sentence, boolean waits,
                       Optional<WallRibbon> ribbon, Optional<Counter> count, List<Boolean> dots, String progress,
                       String small, Optional<WallCaution> caution, Optional<Drawing> drawing, WallFit fit,
                       boolean namesTheClass) {

    /** So many dots stand on a line with the words beside them, and so many on a line of their own. */
    private static final int DOTS_BESIDE = 8;
    private static final int DOTS = 18;
    /** Of the sentence's line. */
    private static final double LINE_OF_DOTS = 0.66;

    public static WallMain of(ClassView view, Times times) {
        return switch (view.stage()) {
            case BEFORE -> still(view, "Welcome", view.name(), "Find your seat and settle in.",
                    Optional.of(Counter.to(view.startsAt(), "start", "We begin any moment",
                            "We begin at " + times.clock(view.startsAt()))));
            case CLOSED -> still(view, view.name(), StageWords.THANKS, view.cure().poured() == 0 ? ""
                    : StageWords.ON_THE_WAY_HOME, Optional.empty());
            case SETTING, RUNNING, FINISHING -> waits(view) ? setting(view, times) : working(view);
        };
    }

    /** Whether a drawing stands beside the words. */
    public boolean drawn() {
        return drawing.isPresent() && fit != WallFit.BARE;
    }

    /** Before the class and after it. */
    private static WallMain still(ClassView view, String kicker, String heading, String sentence,
                                  Optional<Counter> count) {
        double lines = count.isPresent() ? 2.4 : 1;
        WallFit fit = WallFit.of(new WallFit.Told(heading, sentence, lines, List.of(), 0, 0)).fit();
        return new WallMain(kicker, heading, sentence, false, Optional.empty(), count, List.of(), "", "",
                Optional.empty(), drawing(view), fit, true);
    }

    /**
     * The table waits for its candles, even if one seat has still to pour; not once the finish has begun and a hand
     * has decided on the first candle.
     */
    public static boolean waits(ClassView view) {
        if (view.stage() != Stage.CLOSED && WallFinish.isPresent(view)) {
            return WallFinish.of(view).waits();
        }
        return view.stage() == Stage.SETTING || view.stage() != Stage.BEFORE && view.stage() != Stage.CLOSED
                && view.present().step().filter(s -> s.kind() == StepKind.CURE).isPresent();
    }

    private static WallMain setting(ClassView view, Times times) {
        return new WallMain("", heading(view), view.present().wall(), true, WallRibbon.of(view, times),
                Optional.empty(),
                List.of(), "", rests(view), Optional.empty(), Optional.empty(), WallFit.USUAL, false);
    }

    /** What stands below everything, beside news of the range. */
    static String rests(ClassView view) {
        return view.cure().poured() == 0 ? view.present().wall() : CureWords.wall(view);
    }

    /** Inside the range it changes to the hand test. */
    private static String heading(ClassView view) {
        ClassView.CureView cure = view.cure();
        return cure.range().map(range -> switch (range.phase(view.now())) {
            case BEFORE -> "Your candle is setting";
            case INSIDE -> cure.alike() ? "Your candle may be ready" : "Some may be ready now";
            case PAST -> "Time for the hand test";
        }).orElse(cure.poured() == 0 ? StageWords.heading(view) : "Every candle was tried");
    }

    private static WallMain working(ClassView view) {
        NowView now = view.present();
        boolean tapped = now.step().filter(s -> s.kind().needsTap()).isPresent() && now.of() > 0;
        List<Boolean> dots = new ArrayList<>(Collections.nCopies(tapped ? now.done() : 0, true));
        dots.addAll(Collections.nCopies(tapped ? now.of() - now.done() : 0, false));
        String progress = !tapped ? "" : now.done() == 0 ? "Take your time"
                : now.done() == now.of() ? "Everybody is done" : now.done() + " of " + now.of() + " done";
        String sentence = WallFinish.isPresent(view) ? WallFinish.of(view).sentence(now.wall()) : now.wall();
        List<String> caution = Sentences.of(now.caution());
        String heading = StageWords.heading(view);
        WallFit.Chosen chosen = WallFit.of(new WallFit.Told(heading, sentence, tapped ? lines(now.of()) : 0, caution,
                WallFinish.below(view), WallRail.of(view).wraps() ? WallRail.LINE : 0));
        return new WallMain("", heading, chosen.sentence(), false, Optional.empty(), Optional.empty(), dots,
                progress, "", WallCaution.of(chosen.caution()), drawing(view), chosen.fit(), false);
    }

    /** What the dots and the count in words take. */
    private static double lines(int dots) {
        return dots <= DOTS_BESIDE ? 1 : 1 + LINE_OF_DOTS * ((dots + DOTS - 1) / DOTS);
    }

    private static Optional<Drawing> drawing(ClassView view) {
        return Drawing.present(view).or(() -> Optional.of(Drawing.of(Picture.TABLE)));
    }
}
