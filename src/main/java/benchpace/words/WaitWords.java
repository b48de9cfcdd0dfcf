package benchpace.words;

import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitEvent;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The one line that calls out an event of the wait: what, when, where and for whom. */
public final class WaitWords {
    /** What is called out to those whose candle is still to be tried. */
    private static final String BOXES = "Fold a box or choose a ribbon";
    /** What goes with it. */
    public static final String STAYS = "the candle stays where it is";
    /** When wrapping begins, once a time would pretend. */
    public static final String AFTER = "after the hand test";
    private static final Duration SOON = Duration.ofMinutes(15);

    private WaitWords() { }

    /** What is called out, in a line for an instant: what has begun, or what happens and when. */
    public static String say(CallView call, Instant now, Times times) {
        return call.state() == WaitView.CallState.BEGUN && !(call.event() instanceof WaitEvent.Boxes)
                ? what(call.event()) + " now" : say(call.event(), now, times);
    }

    /** What happens and when: "label table in 4 min", "first candles ready from about 20:05". */
    public static String say(WaitEvent event, Instant now, Times times) {
        if (event instanceof WaitEvent.FirstReady e) {
            return what(e) + " from about " + times.clock(e.at());
        }
        if (event instanceof WaitEvent.Boxes) {
            return BOXES + " now; " + STAYS;
        }
        if (event instanceof WaitEvent.WrappingFrom e) {
            return e.due() ? e.name() + " " + AFTER : e.name() + " from about " + times.roughly(e.at());
        }
        return what(event) + (soon(event.at(), now) ? " " + in(event.at(), now) : " " + times.clock(event.at()));
    }

    /** Its name: "Label table", "First candles ready". */
    public static String what(WaitEvent event) {
        return event instanceof WaitEvent.FirstReady ? "First candles ready"
                : event instanceof WaitEvent.Boxes ? BOXES : event.name();
    }

    /** What the plan could not do, each in a sentence. */
    public static List<String> warnings(WaitView wait) {
        List<String> warnings = new ArrayList<>();
        for (Unplaced u : wait.unplaced()) {
            String name = wait.activities().stream().filter(a -> a.id().equals(u.activity().value())).findFirst()
                    .map(WaitView.ActivityView::name).orElse(u.activity().value());
            warnings.add(name + (u.why() == Unplaced.Reason.TOO_FEW_PLACES
                    ? " has too few places for the whole class at once: move it to a time to have it with fewer."
                    : " finds no time when everybody is free: move it to a time, or skip it."));
        }
        if (!wait.late().isEmpty()) {
            warnings.add(Phrases.sentence(who(wait.late()))
                    + (wait.late().size() == 1 ? " is" : " are") + " wrapped more than " + WaitView.LATE.toMinutes()
                    + " min after the promised end: offer the pickup shelf.");
        }
        return warnings;
    }

    /** For whom: "seats 1 to 4 and 7", "seat 3". */
    public static String who(List<SeatNumber> seats) {
        return Phrases.seatRanges(seats.stream().map(SeatNumber::value).toList());
    }

    private static boolean soon(Instant at, Instant now) {
        return !at.isAfter(now.plus(SOON));
    }

    private static String in(Instant at, Instant now) {
        long minutes = (Duration.between(now, at).getSeconds() + 59) / 60;
        return minutes <= 0 ? "now" : "in " + minutes + " min";
    }
}
