package benchpace.words;

import benchpace.cure.room.FitChange;
import benchpace.cure.room.RoomFit;
import java.time.Instant;

/**
 * What a room has taught, in words.
 *
 * @param room  its name as it stands in plans
 * @param name  the same for people: "This room" if it has none
 * @param loss  how it cools against what is computed
 * @param ready when a candle counts as ready there
 */
public record RoomWords(String room, String name, String loss, String ready) {
    private static final double AS_COMPUTED = 0.02;

    /**
     * @param room    its name; empty for "this room"
     * @param classes how many classes taught it
     * @param at      when the latest of them did
     */
    public static RoomWords of(String room, RoomFit fit, int classes, Instant at, Times times) {
        String from = "from " + count(fit.observations(), "observation") + " in " + count(classes, "class")
                + ", the last on " + times.day(at);
        return new RoomWords(room, name(room), loss(fit) + ", " + from + ".", ready(fit));
    }

    /** A room of which nothing counts that was taught. */
    public static RoomWords untaught(String room) {
        return new RoomWords(room, name(room), "Nothing that was taught here counts.",
                "The next class here starts from what is computed.");
    }

    /** "This room" if it has no name. */
    public static String name(String room) {
        return room.isEmpty() ? "This room" : room;
    }

    /** "Cools about 12 % faster than computed, likely 3 to 20 %". */
    public static String loss(RoomFit fit) {
        String middle = middle(fit);
        double low = fit.lossP10() - 1;
        double high = fit.lossP90() - 1;
        if (low < 0 && high > 0) {
            return middle + ", likely between " + percent(-low) + " % slower and " + percent(high) + " % faster";
        }
        double least = Math.min(Math.abs(low), Math.abs(high));
        double most = Math.max(Math.abs(low), Math.abs(high));
        return middle + ", likely " + percent(least) + " to " + percent(most) + " %";
    }

    /** "Cools about 12 % faster than computed". */
    public static String middle(RoomFit fit) {
        double m = fit.lossMedian() - 1;
        return Math.abs(m) < AS_COMPUTED ? "Cools as computed"
                : "Cools about " + percent(Math.abs(m)) + " % " + way(m) + " than computed";
    }

    /** What one class made of it: "From 3 observations: 8 % faster than the room was taken to cool before". */
    public static String change(FitChange change) {
        double moved = change.lossTimes() - 1;
        return "From " + count(change.observations(), "observation") + ": " + (Math.abs(moved) < AS_COMPUTED
                ? "about as fast as the room was taken to cool before"
                : percent(Math.abs(moved)) + " % " + way(moved) + " than the room was taken to cool before");
    }

    private static String way(double difference) {
        return difference > 0 ? "faster" : "slower";
    }

    private static String ready(RoomFit fit) {
        return "A candle counts as ready here with a skin and about " + percent(fit.readyMean())
                + " % of the wax solid, likely " + percent(fit.readyP10()) + " to " + percent(fit.readyP90())
                + " %, as hand tests had it.";
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : what.endsWith("s") ? "es" : "s");
    }
}
