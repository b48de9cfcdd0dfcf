package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.NowView;
import benchpace.board.ClassView.Stage;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The large words on the wall. It names no guest and never tells who is slow.
 *
 * @param count    the large ticking time; empty while everyone works
 * @param dots     how far the table is: one a seat, the done ones first, whoever they are
 * @param progress the same in words
 * @param small    one quiet line below
 */
public record WallMain(String kicker, String heading, String sentence, Optional<Counter> count, List<Boolean> dots,
                       String progress, String small) {

    static WallMain of(ClassView view, Times times) {
        return switch (view.stage()) {
            case BEFORE -> new WallMain("Welcome", view.name(), "Find your seat and settle in.",
                    Optional.of(Counter.to(view.startsAt(), "start", "We begin any moment",
                            "We begin at " + times.clock(view.startsAt()))), List.of(), "", "");
            case CLOSED -> new WallMain(view.name(), "Thank you for coming", view.cure().poured() == 0 ? ""
                    : "Your candle stays soft inside for hours. Carry it level.", Optional.empty(), List.of(), "", "");
            case SETTING -> setting(view, times);
            case RUNNING, FINISHING -> working(view, times);
        };
    }

    private static WallMain setting(ClassView view, Times times) {
        NowView now = view.present();
        Optional<Counter> count = view.cure().all().map(w -> Counter.ready(w, "left", "any minute now", times));
        String when = view.cure().all().map(w -> "All candles ready about " + times.roughly(w)).orElse("");
        return new WallMain(when, now.heading(), now.wall(), count, List.of(), "", CureWords.basis(view.cure()));
    }

    private static WallMain working(ClassView view, Times times) {
        NowView now = view.present();
        boolean tapped = now.step().filter(s -> s.kind().needsTap()).isPresent() && now.of() > 0;
        List<Boolean> dots = new java.util.ArrayList<>(Collections.nCopies(tapped ? now.done() : 0, true));
        dots.addAll(Collections.nCopies(tapped ? now.of() - now.done() : 0, false));
        String progress = !tapped ? "" : now.done() == 0 ? "Take your time"
                : now.done() == now.of() ? "Everybody is done" : now.done() + " of " + now.of() + " done";
        return new WallMain(view.name(), now.heading(), now.wall(), Optional.empty(), dots, progress,
                now.caution());
    }
}
