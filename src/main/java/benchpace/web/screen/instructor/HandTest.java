package benchpace.web.screen.instructor;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.StepKind;
import benchpace.web.screen.shell.Counter;

/**
 * What may not be said of a candle with one tap before its range has begun: that somebody tried it and found it firm.
 * The page asks; the board takes whatever was answered, however late it arrives.
 */
final class HandTest {
    private static final String ALWAYS = "always";

    private HandTest() { }

    /**
     * Until when a tap that finishes a step for a seat asks first.
     *
     * @return RFC 3339; {@code always} for a candle that is not poured; empty if the step says nothing of the candle or
     *     a hand has decided already
     */
    static String from(ClassView view, SeatView seat, String step) {
        boolean pours = view.steps().stream().anyMatch(s -> s.kind() == StepKind.POUR);
        return isAfterTheCure(view, step) && (pours || seat.pouredAt().isPresent()) ? from(seat) : "";
    }

    /** The same for the tap that says it was tried. */
    static String from(SeatView seat) {
        return seat.candle().map(c -> c.settled() ? "" : Counter.iso(c.said().from())).orElse(ALWAYS);
    }

    private static boolean isAfterTheCure(ClassView view, String step) {
        boolean cured = false;
        for (ClassView.StepView s : view.steps()) {
            if (cured && s.id().equals(step)) {
                return true;
            }
            cured |= s.kind() == StepKind.CURE;
        }
        return false;
    }
}
