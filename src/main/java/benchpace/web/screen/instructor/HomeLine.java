package benchpace.web.screen.instructor;

import benchpace.board.pacing.HomeTime;
import benchpace.board.view.ClassView;
import benchpace.words.HomeWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;

/**
 * When everyone goes home, against what was promised.
 *
 * @param when    "20:40", "about 20:55" or a range
 * @param against what that is to the promise: "promised; odds of keeping it 6 in 10", "15 min after the promised 20:40"
 * @param late    everyone likely goes later than promised
 */
public record HomeLine(String when, String against, boolean late, String driver, String basis) {
    private static final int CLOCK_LENGTH = "20:05".length();

    public static HomeLine of(ClassView view, Times times) {
        HomeTime home = view.home();
        HomeTime.Promise promise = home.promise();
        String against = against(home, view.now(), times.clock(home.promised()));
        if (promise == HomeTime.Promise.ENDED) {
            return new HomeLine("ended " + times.clock(home.ended().orElseThrow()), against, false, "", "");
        }
        String after = home.rest().toMinutes() == 0 ? ""
                : ", then " + Phrases.length(home.rest()) + " by the plan to finish";
        String rests = HomeWords.basis(home);
        String basis = rests.isEmpty() ? "" : Phrases.sentence(rests) + after + ".";
        boolean before = view.stage() == ClassView.Stage.BEFORE && promise == HomeTime.Promise.PLANNED;
        if (before || promise == HomeTime.Promise.UNTOLD) { // until it begins its odds are what the prep sheet says
            return new HomeLine(times.clock(home.promised()), "promised", false, "", "");
        }
        if (promise == HomeTime.Promise.PLANNED) {
            return new HomeLine(times.clock(home.promised()), against, false, "",
                    rests.isEmpty() ? "" : "Odds " + rests + ".");
        }
        String window = times.window(home.home(home.p10(), view.now()), home.home(home.p90(), view.now()));
        String when = window.length() > CLOCK_LENGTH ? window : "about " + window;
        return new HomeLine(when, against, promise == HomeTime.Promise.LATE, HomeWords.driver(home), basis);
    }

    private static String against(HomeTime home, Instant now, String promised) {
        Duration over = Times.apart(home.promised(), home.home(home.p50(), now));
        return switch (home.promise()) {
            case UNTOLD -> "promised";
            case PLANNED -> "promised; odds of keeping it " + kept(home);
            case OPEN -> "promised " + promised + "; odds of keeping it " + kept(home);
            case KEPT -> "as promised, " + promised;
            case LATE -> after(over, promised);
            case EARLY -> before(over.negated(), promised);
            case ENDED -> home.odds().filter(o -> o.late() > 0).isPresent() ? after(over, promised)
                    : home.odds().filter(o -> o.early() > 0).isPresent() ? before(over.negated(), promised)
                    : "as promised, " + promised;
        };
    }

    private static String kept(HomeTime home) {
        return Phrases.odds(home.odds().orElseThrow().kept());
    }

    private static String after(Duration over, String promised) {
        return Phrases.length(over) + " after the promised " + promised;
    }

    private static String before(Duration under, String promised) {
        return Phrases.length(under) + " before the promised " + promised;
    }

    /** The same in one line: "Home 20:40, promised; odds of keeping it 6 in 10". */
    public String sentence() {
        return "Home " + when + ", " + against;
    }
}
