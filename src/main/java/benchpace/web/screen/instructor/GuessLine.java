package benchpace.web.screen.instructor;

import benchpace.words.Times;
import java.time.Instant;
import java.util.Optional;

/** What those who run the board are told while somebody guesses PINs. @param words empty while nobody does */
public record GuessLine(String words) {
    /** Fewer wrong ones are somebody's mistyping. */
    static final int WORTH_TELLING = 5;

    /**
     * @param wrong     wrong PINs in the last hour
     * @param addresses from so many
     * @param shutUntil until when strangers cannot pair by PIN, if so
     */
    public static GuessLine of(int wrong, int addresses, Optional<Instant> shutUntil, Times times) {
        if (wrong < WORTH_TELLING && shutUntil.isEmpty()) {
            return new GuessLine("");
        }
        String tried = wrong == 0 ? "Somebody tried many wrong PINs."
                : "Somebody tried " + of(wrong, "wrong PIN", "wrong PINs") + " in the last hour, from "
                + of(addresses, "address", "addresses") + ".";
        return new GuessLine(tried + shutUntil.map(until -> " Until " + times.clock(until)
                + " new devices are let in by link only.").orElse(""));
    }

    private static String of(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
