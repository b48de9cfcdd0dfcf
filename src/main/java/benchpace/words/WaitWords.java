package benchpace.words;

import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitEvent;
import benchpace.plan.SeatNumber;
import benchpace.plan.WallClock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The one line that calls out an event of the wait: what, when, where and for whom. */
public final class WaitWords {
    /** What is called out to those whose candle is still to be tried. */
    public static final String BOXES = "Fold a box or choose a ribbon";
    /** What goes with it. */
    public static final String STAYS = "the candle stays where it is";
    /** When wrapping begins, once a time would pretend. */
    public static final String AFTER = "after the hand test";
    private static final Duration SOON = Duration.ofMinutes(15);

    private WaitWords() { }

    /** What is called out, in a line for an instant: what has begun, or what happens and when. */
    public static String say(CallView call, Instant now, ZoneId zone) {
        return call.state() == WaitView.CallState.BEGUN && !(call.event() instanceof WaitEvent.Boxes)
                ? what(call.event()) + " now" : say(call.event(), now, zone);
    }

    /** What happens and when: "label table in 4 min", "first candles ready from about 20:05". */
    public static String say(WaitEvent event, Instant now, ZoneId zone) {
        if (event instanceof WaitEvent.FirstReady e) {
            return what(e) + " from about " + clock(e.at(), zone);
        }
        if (event instanceof WaitEvent.Boxes) {
            return BOXES + " now; " + STAYS;
        }
        if (event instanceof WaitEvent.WrappingFrom e) {
            return e.due() ? e.name() + " " + AFTER : e.name() + " from about " + clock(roughly(e.at()), zone);
        }
        return what(event) + (soon(event.at(), now) ? " " + in(event.at(), now) : " " + clock(event.at(), zone));
    }

    /** Its name: "Label table", "First candles ready". */
    public static String what(WaitEvent event) {
        if (event instanceof WaitEvent.Opens e) {
            return e.name();
        } else if (event instanceof WaitEvent.ClassBreak e) {
            return e.name();
        } else if (event instanceof WaitEvent.WrappingFrom e) {
            return e.name();
        } else if (event instanceof WaitEvent.Wrapping e) {
            return e.name();
        }
        return event instanceof WaitEvent.Boxes ? BOXES : "First candles ready";
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
            String who = who(wait.late());
            warnings.add(who.substring(0, 1).toUpperCase(Locale.ROOT) + who.substring(1)
                    + (wait.late().size() == 1 ? " is" : " are") + " wrapped more than " + WaitView.LATE.toMinutes()
                    + " min after the promised end: offer the pickup shelf.");
        }
        return warnings;
    }

    /** For whom: "seats 1 to 4 and 7", "seat 3". */
    public static String who(List<SeatNumber> seats) {
        List<Integer> numbers = seats.stream().map(SeatNumber::value).sorted().distinct().toList();
        StringBuilder words = new StringBuilder(numbers.size() == 1 ? "seat " : "seats ");
        for (int i = 0; i < numbers.size(); ) {
            int end = i;
            while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
                end++;
            }
            boolean run = end - i >= 2;
            int last = run ? end : i;
            words.append(i == 0 ? "" : last == numbers.size() - 1 ? " and " : ", ");
            words.append(numbers.get(i)).append(run ? " to " + numbers.get(end) : "");
            i = last + 1;
        }
        return numbers.isEmpty() ? "nobody" : words.toString();
    }

    private static boolean soon(Instant at, Instant now) {
        return !at.isAfter(now.plus(SOON));
    }

    private static String in(Instant at, Instant now) {
        long minutes = (Duration.between(now, at).getSeconds() + 59) / 60;
        return minutes <= 0 ? "now" : "in " + minutes + " min";
    }

    /** An estimate promises no exact minute, and none too early: the next full five minutes. */
    private static Instant roughly(Instant at) {
        return Instant.ofEpochSecond(Math.floorDiv(at.getEpochSecond() + 299, 300) * 300);
    }

    private static String clock(Instant at, ZoneId zone) {
        return WallClock.words(at, zone);
    }
}
