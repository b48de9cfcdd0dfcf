package benchpace.words;

import benchpace.board.pacing.Eased;
import benchpace.board.pacing.SeatFlag;
import benchpace.plan.WallClock;
import java.time.ZoneId;
import java.util.Locale;

/** Says in one line a person would say why a seat is flagged, and what it costs. */
public final class FlagWords {

    private FlagWords() { }

    /** "Seat 4: still on wicks?" or the reason and what it costs everyone. */
    public static String reason(SeatFlag flag) {
        return "Seat " + flag.seat() + ": " + switch (flag.level()) {
            case SLIPPING -> "still on " + spoken(flag.step()) + "?";
            case BEHIND -> behind(flag);
        };
    }

    /** Behind without a whole minute over its time: it is likely to be stuck, or somebody had to go there. */
    private static String behind(SeatFlag flag) {
        String why = flag.minutesOver() < 1 ? "seems stuck."
                : flag.minutesOver() + " min longer than this table needs.";
        String price = flag.priceMinutes() < 1 ? ""
                : " If it goes on, everyone leaves " + flag.priceMinutes() + " min later.";
        return spoken(flag.step()) + ", " + why + price;
    }

    /** "Seat 4 is still slow; MO sorted it at 19:16." */
    static String eased(Eased eased, ZoneId zone) {
        return "Seat " + eased.flag().seat() + " is still slow; " + eased.helper() + " sorted it at "
                + WallClock.words(eased.at(), zone) + ".";
    }

    /** "Wicks" within a sentence is "wicks"; a name of several words keeps its capital, so that it is seen as one. */
    private static String spoken(String stepName) {
        boolean word = stepName.codePoints().allMatch(Character::isLetter)
                && stepName.codePoints().skip(1).allMatch(Character::isLowerCase);
        return word ? stepName.toLowerCase(Locale.ROOT) : stepName;
    }
}
