package benchpace.words;

import benchpace.board.pacing.TurnsAt;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Says whose turn it is where a step serves only some seats at once. Seats alone: nobody is slow for waiting. */
public final class TurnWords {
    private static final int NAMED = 4;
    private static final long HALF_A_MINUTE = 30;

    private TurnWords() { }

    /**
     * "At the melter tap: seats 3 and 5. Next: 7, then 8 and 2. All have had their turn in about 12 min." Empty while
     * nobody waits.
     */
    public static String line(TurnsAt turns, Instant now) {
        if (turns.waiting().isEmpty()) {
            return "";
        }
        String served = turns.served().isEmpty() ? "" : "At the " + turns.what() + ": "
                + Phrases.seats(turns.served(), NAMED) + ". ";
        String place = turns.served().isEmpty() ? "Next at the " + turns.what() + ": " : "Next: ";
        List<Integer> then = turns.waiting().subList(1, turns.waiting().size());
        if (then.isEmpty()) {
            return served + place + turns.waiting().get(0) + ".";
        }
        return served + place + turns.waiting().get(0) + ", then "
                + (then.size() > NAMED ? then.size() + " more" : Phrases.numbers(then))
                + ". All have had their turn in about " + minutes(turns, now) + ".";
    }

    private static String minutes(TurnsAt turns, Instant now) {
        Duration left = Duration.between(now, turns.through()).plusSeconds(HALF_A_MINUTE);
        return Phrases.length(left.compareTo(Duration.ofMinutes(1)) < 0 ? Duration.ofMinutes(1) : left);
    }

    /** Of a seat that waits. @param before how many have their turn before it */
    public static String state(int before) {
        return before == 0 ? "next" : "waits its turn";
    }

    /** "2 before it"; empty for the next. @param before how many have their turn before it */
    public static String place(int before) {
        return before == 0 ? "" : before + " before it";
    }
}
