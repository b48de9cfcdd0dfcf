package benchpace.board;

import benchpace.board.WaitView.ChangeView;
import benchpace.breaks.AnnouncedChange;
import benchpace.breaks.AnnouncedChange.Reason;
import benchpace.breaks.WaitWords;
import benchpace.live.LiveClass;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says what guests were told and does not hold any more, seats with the same change in one sentence. */
final class ChangeWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ChangeWords() { }

    /** Changes that read the same but for the seat. */
    private record Same(Instant at, ActivityId activity, Instant was, Optional<Instant> now, Reason why) { }

    /** The newest first. */
    static List<ChangeView> of(LiveClass live, WaitLink link, ZoneId zone) {
        Map<Same, List<SeatNumber>> groups = new LinkedHashMap<>();
        for (WaitLink.Change change : link.changes()) {
            AnnouncedChange what = change.what();
            Optional<Instant> now = what instanceof AnnouncedChange.Moved m ? Optional.of(m.nowFrom())
                    : Optional.empty();
            groups.computeIfAbsent(new Same(change.at(), what.was().activity(), what.was().from(), now, what.why()),
                    s -> new ArrayList<>()).add(what.was().seat());
        }
        List<ChangeView> views = new ArrayList<>();
        groups.forEach((same, seats) -> views.add(new ChangeView(same.at(), words(live, same, seats, zone))));
        views.sort(Comparator.comparing(ChangeView::at).reversed());
        return views;
    }

    private static String words(LiveClass live, Same same, List<SeatNumber> seats, ZoneId zone) {
        String name = live.plan().activity(same.activity()).map(Activity::name).orElse(same.activity().value());
        String who = WaitWords.who(seats);
        String what = same.now().map(now -> " moved from " + clock(same.was(), zone) + " to " + clock(now, zone))
                .orElse(" at " + clock(same.was(), zone) + " is off");
        return name + what + " for " + who + ", " + why(same.why(), seats.size() == 1) + ".";
    }

    private static String why(Reason why, boolean one) {
        return switch (why) {
            case GUEST_AWAY -> one ? "as the guest is away" : "as the guests are away";
            case NOT_OFFERED -> "as it was skipped or ended";
            case INSTRUCTOR_MOVED_IT -> "as you moved or lengthened it";
            case DONE_OTHERWISE -> "as it is done or something else was taken up";
            case NOT_FREE_IN_TIME -> one ? "because the seat poured late or is held up"
                    : "because the seats poured late or are held up";
            case CANDLE_TOO_EARLY -> one ? "as the candle is expected sooner" : "as the candles are expected sooner";
            case CANDLE_LATER -> one ? "as the candle needs longer" : "as the candles need longer";
            case NOT_JUDGED_SET -> one ? "as its candle is still to be tried or trimmed"
                    : "as their candles are still to be tried or trimmed";
            case NO_PLACE -> "as no place is free then";
        };
    }

    private static String clock(Instant at, ZoneId zone) {
        return CLOCK.format(at.atZone(zone));
    }
}
