package benchpace.board.pacing;

import benchpace.pace.Level;
import benchpace.pace.SeatPace;
import benchpace.plan.SeatNumber;
import benchpace.plan.WallClock;
import java.time.ZoneId;
import java.util.Locale;

/** Says in one line a person would say why a seat is flagged, and what it costs. */
public final class FlagWords {

    private FlagWords() { }

    /** @param level what it is flagged for, or would be */
    static SeatFlag flag(SeatPace seat, Level level, String stepName) {
        boolean behind = level == Level.BEHIND;
        String reason = "Seat " + seat.seat() + ": " + (behind ? behind(seat, stepName) : "still on "
                + spoken(stepName) + "?");
        return new SeatFlag(behind ? SeatFlag.Level.BEHIND : SeatFlag.Level.SLIPPING, reason, seat.overMinutes(),
                seat.priceMinutes());
    }

    private static String behind(SeatPace seat, String stepName) {
        String over = seat.overMinutes() > 0 ? seat.overMinutes() + " min longer" : "longer";
        String price = seat.priceMinutes() < 1 ? ""
                : " If it goes on, everyone leaves " + seat.priceMinutes() + " min later.";
        return spoken(stepName) + ", " + over + " than this table needs." + price;
    }

    /** "Seat 4 is still slow; MO sorted it at 19:16." */
    public static String eased(SeatNumber seat, Eased eased, ZoneId zone) {
        return "Seat " + seat.value() + " is still slow; " + eased.helper() + " sorted it at "
                + WallClock.words(eased.at(), zone) + ".";
    }

    /** "Wicks" within a sentence is "wicks"; a name of several words keeps its capital, so that it is seen as one. */
    private static String spoken(String stepName) {
        boolean word = stepName.codePoints().allMatch(Character::isLetter)
                && stepName.codePoints().skip(1).allMatch(Character::isLowerCase);
        return word ? stepName.toLowerCase(Locale.ROOT) : stepName;
    }
}
