package benchpace.web.screen.wait;

import benchpace.board.view.ClassView;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.CallState;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.breaks.WaitEvent;
import benchpace.web.screen.shell.Counter;
import benchpace.words.Times;
import benchpace.words.WaitWords;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Something to call out in the wait: what, when, where and for whom.
 *
 * @param lead  what stands before the time: "Label table", "First candles ready from about"
 * @param count the ticking time, while it is near; else the time is in {@code clock}
 * @param clock a time of day, or "now"; empty where {@code count} tells it
 * @param where may be empty
 * @param who   by seat numbers; empty as long as guests are not told
 * @param note  what to mind; may be empty
 * @param key   names the event, for a cue that sounds once
 * @param at    RFC 3339
 */
public record WaitCall(String lead, Optional<Counter> count, String clock, String where, String who, String note,
                       boolean begun, String key, String at) {

    public static List<WaitCall> all(ClassView view, Times times) {
        return view.waiting().calls().stream().map(c -> of(c, view, times)).toList();
    }

    /**
     * Of what has begun the one with most seats, then what lies ahead, of each activity only the next. For screens that
     * say when the first candles are ready themselves.
     */
    public static List<WaitCall> first(ClassView view, Times times, int most) {
        List<CallView> calls = new java.util.ArrayList<>();
        for (CallView call : view.waiting().calls()) {
            boolean said = call.event() instanceof WaitEvent.FirstReady;
            if (!said && calls.stream().noneMatch(c -> c.state() == call.state()
                    && (c.state() == CallState.BEGUN || what(c).equals(what(call))))) {
                calls.add(call);
            }
        }
        return calls.stream().limit(most).map(c -> of(c, view, times)).toList();
    }

    private static WaitCall of(CallView call, ClassView view, Times times) {
        WaitEvent event = call.event();
        boolean begun = call.state() == CallState.BEGUN;
        boolean candles = event instanceof WaitEvent.FirstReady;
        boolean estimate = candles || event instanceof WaitEvent.WrappingFrom;
        boolean counts = !begun && call.told() && !estimate;
        String who = call.told() && !candles ? who(call, view) : "";
        Optional<Counter> count = counts
                ? Optional.of(Counter.to(call.at(), "in", "now", "at " + times.clock(call.at()))) : Optional.empty();
        String clock = begun ? until(event, times) : counts ? ""
                : event instanceof WaitEvent.WrappingFrom w && w.due() ? WaitWords.AFTER
                : times.clock(call.at());
        return new WaitCall(lead(call), count, clock, call.event().where(), who,
                event instanceof WaitEvent.Boxes ? WaitWords.STAYS : "", begun, key(call), Counter.iso(call.at()));
    }

    /** Names the event among those of this class, whatever the clock says. */
    private static String key(CallView call) {
        return what(call) + "@" + call.at().getEpochSecond() / 60;
    }

    /** Names of activities are one thing or many: no verb follows. */
    private static String lead(CallView call) {
        boolean about = call.event() instanceof WaitEvent.FirstReady
                || call.event() instanceof WaitEvent.WrappingFrom w && !w.due();
        return about ? what(call) + " from about" : what(call);
    }

    private static String what(CallView call) {
        return WaitWords.what(call.event());
    }

    private static String until(WaitEvent event, Times times) {
        return event instanceof WaitEvent.ClassBreak b ? "until " + times.clock(b.until()) : "now";
    }

    /** "everybody" when it is for all who wait. */
    private static String who(CallView call, ClassView view) {
        WaitView waiting = view.waiting();
        boolean all = call.event() instanceof WaitEvent.ClassBreak && call.seats().size() > 1
                && call.seats().size() == waiting.strips().size();
        return all ? "everybody" : call.seats().isEmpty() ? "" : WaitWords.who(call.event().seats());
    }

    /** The same without where. */
    public WaitCall placeless() {
        return new WaitCall(lead, count, clock, "", who, note, begun, key, at);
    }

    /** Where, for whom, and what to mind, apart by dots. */
    public String details() {
        return Stream.of(where, who, note).filter(words -> !words.isEmpty()).collect(Collectors.joining(" · "));
    }
}
