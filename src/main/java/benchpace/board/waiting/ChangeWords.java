package benchpace.board.waiting;

import benchpace.board.waiting.WaitView.ChangeView;
import benchpace.breaks.AnnouncedChange;
import benchpace.breaks.AnnouncedChange.Reason;
import benchpace.breaks.WaitWords;
import benchpace.live.LiveClass;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.WallClock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says what guests were told and does not hold any more, seats with the same change in one sentence. */
final class ChangeWords {

    private ChangeWords() { }

    /** What one cause changed at one instant. */
    private record Cause(Instant at, Reason why, Optional<ActivityId> other, Optional<ActivityId> own) { }

    /** Changes that read the same but for the seat. */
    private record Same(ActivityId activity, Instant was, Optional<Instant> now) { }

    /** The newest first; all that one cause changed at once is one of them. */
    static List<ChangeView> of(LiveClass live, WaitLink link, ZoneId zone) {
        Map<Cause, Map<Same, List<SeatNumber>>> causes = new LinkedHashMap<>();
        for (WaitLink.Change change : link.changes()) {
            AnnouncedChange what = change.what();
            Optional<Instant> now = what instanceof AnnouncedChange.Moved m ? Optional.of(m.nowFrom())
                    : Optional.empty();
            causes.computeIfAbsent(cause(change.at(), what), c -> new LinkedHashMap<>())
                    .computeIfAbsent(new Same(what.was().activity(), what.was().from(), now), s -> new ArrayList<>())
                    .add(what.was().seat());
        }
        List<ChangeView> views = new ArrayList<>();
        causes.forEach((cause, changes) -> views.add(view(live, cause, changes, zone)));
        views.sort(Comparator.comparing(ChangeView::at).reversed());
        return views;
    }

    /** What was done to an activity itself is told of each activity apart. */
    private static Cause cause(Instant at, AnnouncedChange what) {
        boolean itself = what.why() == Reason.NOT_OFFERED || what.why() == Reason.INSTRUCTOR_MOVED_IT;
        return new Cause(at, what.why(), what.other(), itself ? Optional.of(what.was().activity()) : Optional.empty());
    }

    private static ChangeView view(LiveClass live, Cause cause, Map<Same, List<SeatNumber>> changes, ZoneId zone) {
        List<SeatNumber> seats = changes.values().stream().flatMap(List::stream).distinct().toList();
        boolean several = changes.size() > 1;
        String why = why(live, cause, several ? cause.own().map(id -> name(live, id)).orElse("it") : "it",
                seats.size() == 1);
        List<String> whats = new ArrayList<>();
        changes.forEach((same, who) -> whats.add((several && cause.own().isPresent() ? ""
                : name(live, same.activity()) + (same.now().isPresent() ? " moved from " : " at "))
                + what(same, who, zone)));
        if (!several) {
            String words = whats.get(0) + ", " + why + ".";
            return new ChangeView(cause.at(), words, words);
        }
        String since = why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1);
        return new ChangeView(cause.at(), since + ": " + String.join("; ", whats) + ".",
                since + ", " + whats.size() + " things that were told have moved or are off.");
    }

    private static String what(Same same, List<SeatNumber> seats, ZoneId zone) {
        return clock(same.was(), zone) + same.now().map(now -> " to " + clock(now, zone)).orElse(" is off")
                + " for " + WaitWords.who(seats);
    }

    private static String name(LiveClass live, ActivityId id) {
        return live.plan().activity(id).map(Activity::name).orElse(id.value());
    }

    private static String why(LiveClass live, Cause cause, String it, boolean one) {
        String other = cause.other().map(id -> name(live, id)).orElse("something else");
        return switch (cause.why()) {
            case GUEST_AWAY -> one ? "as the guest is away" : "as the guests are away";
            case NOT_OFFERED -> cause.own().filter(id -> live.activity(id).skipped()).isPresent()
                    ? "as " + it + " was skipped" : "as " + it + " was ended";
            case INSTRUCTOR_MOVED_IT -> cause.own().filter(id -> live.activity(id).open()).isPresent()
                    ? "as you started " + it : "as you moved " + it;
            case DONE_OTHERWISE -> "as it is done or something else was taken up";
            case NOT_FREE_IN_TIME -> one ? "because the seat poured late" : "because the seats poured late";
            case OTHER_STARTED -> "as you started " + other;
            case STILL_AT_OTHER -> (one ? "as the seat is still at " : "as the seats are still at ") + other;
            case OTHER_AT_THAT_TIME -> "as " + other + " is at that time now";
            case NOT_TOGETHER -> "as not everybody is free then";
            case CANDLE_TOO_EARLY -> one ? "as the candle is expected sooner" : "as the candles are expected sooner";
            case CANDLE_LATER -> one ? "as the candle needs longer" : "as the candles need longer";
            case NOT_JUDGED_SET -> one ? "as its candle is still to be tried or trimmed"
                    : "as their candles are still to be tried or trimmed";
            case NO_PLACE -> "as no place is free then";
        };
    }

    private static String clock(Instant at, ZoneId zone) {
        return WallClock.words(at, zone);
    }
}
