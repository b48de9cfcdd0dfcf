package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.NowView;
import benchpace.board.ClassView.Stage;
import benchpace.board.ReadyWindow;
import benchpace.plan.StepKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The large words on the wall. It names no guest and never tells who is slow.
 *
 * @param window   the wait's own layout: when the candles should be ready, empty if nothing is poured; not present
 *                 outside the wait
 * @param count    the large ticking time; empty while everyone works
 * @param dots     how far the table is: one a seat, the done ones first, whoever they are
 * @param progress the same in words
 * @param small    one quiet line below
 */
public record WallMain(String kicker, String heading, String sentence, Optional<String> window,
                       Optional<Counter> count, List<Boolean> dots, String progress, String small) {

    static WallMain of(ClassView view, Times times) {
        return switch (view.stage()) {
            case BEFORE -> new WallMain("Welcome", view.name(), "Find your seat and settle in.",
                    Optional.empty(), Optional.of(Counter.to(view.startsAt(), "start", "We begin any moment",
                            "We begin at " + times.clock(view.startsAt()))), List.of(), "", "");
            case CLOSED -> new WallMain(view.name(), "Thank you for coming", view.cure().poured() == 0 ? ""
                    : "Your candle stays soft inside for hours. Carry it level.", Optional.empty(), Optional.empty(),
                    List.of(), "", "");
            case SETTING, RUNNING, FINISHING -> waits(view) ? setting(view, times) : working(view, times);
        };
    }

    /** The table waits for its candles, even if one seat has still to pour; not once the finish has begun. */
    static boolean waits(ClassView view) {
        if (view.present().step().filter(s -> s.kind() == StepKind.FINISH).isPresent()) {
            return false;
        }
        return view.stage() == Stage.SETTING || view.stage() != Stage.BEFORE && view.stage() != Stage.CLOSED
                && view.present().step().filter(s -> s.kind() == StepKind.CURE).isPresent();
    }

    private static WallMain setting(ClassView view, Times times) {
        NowView now = view.present();
        Optional<ReadyWindow> window = view.cure().all().or(view.cure()::first);
        Optional<Counter> count = window.map(
                w -> Counter.ready(w, "left", "any minute now", "try them now", times));
        boolean all = view.cure().all().isPresent();
        String when = all ? times.window(view.home().p10(), view.home().p90()) : window.map(times::roughly).orElse("");
        String kicker = all ? "All candles ready about" : window.isPresent() ? "First candles ready about" : "";
        String small = view.cure().poured() == 0 ? "" : CureWords.wall(window);
        return new WallMain(kicker, now.heading(), now.wall(), Optional.of(when), count, List.of(), "", small);
    }

    private static WallMain working(ClassView view, Times times) {
        NowView now = view.present();
        boolean tapped = now.step().filter(s -> s.kind().needsTap()).isPresent() && now.of() > 0;
        List<Boolean> dots = new ArrayList<>(Collections.nCopies(tapped ? now.done() : 0, true));
        dots.addAll(Collections.nCopies(tapped ? now.of() - now.done() : 0, false));
        String progress = !tapped ? "" : now.done() == 0 ? "Take your time"
                : now.done() == now.of() ? "Everybody is done" : now.done() + " of " + now.of() + " done";
        return new WallMain(view.name(), now.heading(), now.wall(), Optional.empty(), Optional.empty(), dots,
                progress, now.caution());
    }
}
