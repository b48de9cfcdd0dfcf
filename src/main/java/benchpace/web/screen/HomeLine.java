package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.HomeTime;
import java.time.Duration;
import java.time.Instant;

/**
 * When everyone goes home, against what was promised.
 *
 * @param when    "about 20:55" or a range
 * @param against "15 min after the promised 20:40"
 * @param late    the likely end lies more than five minutes after the promised one
 */
public record HomeLine(String when, String against, boolean late, String driver, String basis) {
    private static final Duration SOON = Duration.ofMinutes(5);
    private static final int CLOCK_LENGTH = "20:05".length();

    static HomeLine of(ClassView view, Times times) {
        HomeTime home = view.home();
        Instant likely = home.home(home.p50(), view.now());
        Duration over = Duration.between(home.promised(), likely);
        String promised = times.clock(home.promised());
        if (home.ended().isPresent()) {
            return new HomeLine("ended " + times.clock(likely), against(over, promised), false, "", "");
        }
        String window = times.window(home.home(home.p10(), view.now()), home.home(home.p90(), view.now()));
        String when = window.length() > CLOCK_LENGTH ? window : "about " + window;
        String after = home.rest().isZero() ? "" : ", then " + Phrases.length(home.rest()) + " by the plan to finish";
        String basis = home.basis().isEmpty() ? "" : Phrases.sentence(home.basis()) + after + ".";
        if (view.stage() == ClassView.Stage.BEFORE) {
            return new HomeLine(when, "promised for " + promised, false, "", basis);
        }
        return new HomeLine(when, against(over, promised), over.compareTo(SOON) > 0, home.driver(), basis);
    }

    private static String against(Duration over, String promised) {
        if (over.compareTo(SOON) > 0) {
            return Phrases.length(over) + " after the promised " + promised;
        }
        if (over.compareTo(SOON.negated()) < 0) {
            return Phrases.length(over.negated()) + " before the promised " + promised;
        }
        return "as promised, " + promised;
    }
}
