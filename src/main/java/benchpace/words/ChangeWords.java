package benchpace.words;

import benchpace.board.waiting.WaitView.ActivityView;
import benchpace.board.waiting.WaitView.ChangeView;
import benchpace.board.waiting.WaitView.Told;
import java.util.List;
import java.util.stream.Collectors;

/** Says what guests were told and does not hold any more, and why, seats with the same change in one sentence. */
public final class ChangeWords {
    private ChangeWords() { }

    /** The whole of it in a sentence. */
    public static String sentence(ChangeView change, Times times) {
        if (change.told().size() == 1) {
            Told told = change.told().get(0);
            return what(told, times, true) + ", " + why(change) + ".";
        }
        return since(change) + ": " + change.told().stream().map(t -> what(t, times, change.own().isEmpty()))
                .collect(Collectors.joining("; ")) + ".";
    }

    /** The same where room is short. */
    public static String brief(ChangeView change, Times times) {
        return change.told().size() == 1 ? sentence(change, times)
                : since(change) + ", " + change.told().size() + " things that were told have moved or are off.";
    }

    private static String since(ChangeView change) {
        return Phrases.sentence(why(change));
    }

    private static String what(Told told, Times times, boolean named) {
        String name = named ? told.activity() + (told.now().isPresent() ? " moved from " : " at ") : "";
        return name + times.clock(told.was()) + told.now().map(now -> " to " + times.clock(now)).orElse(" is off")
                + " for " + WaitWords.who(told.seats());
    }

    private static String why(ChangeView change) {
        boolean one = change.told().stream().map(Told::seats).flatMap(List::stream).distinct().count() == 1;
        String it = change.told().size() == 1 ? "it" : change.own().map(ActivityView::name).orElse("it");
        String other = change.other().orElse("something else");
        return switch (change.why()) {
            case GUEST_AWAY -> one ? "as the guest is away" : "as the guests are away";
            case NOT_OFFERED -> change.own().filter(ActivityView::skipped).isPresent()
                    ? "as " + it + " was skipped" : "as " + it + " was ended";
            case INSTRUCTOR_MOVED_IT -> change.own().filter(ActivityView::open).isPresent()
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
}
