package benchpace.words;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Lengths, seat numbers and counts in words, as every screen says them. {@code static/js/clock.js} says the same. */
public final class Phrases {
    private Phrases() { }

    /** "4 min", "1 h", "1 h 5 min": whole minutes, cut off, not rounded. */
    public static String length(Duration length) {
        long minutes = Math.max(0, length.toMinutes());
        if (minutes < 60) {
            return minutes + " min";
        }
        return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    /** A number of minutes, however many: "0 min", "96 min". */
    public static String count(int minutes) {
        return minutes + " min";
    }

    /** "6 in 10": how often in ten it would be so; nothing uncertain is said to be sure. @param odds 0 to 1 */
    public static String odds(double odds) {
        long tenths = Math.round(10 * odds);
        return tenths < 1 ? "less than 1 in 10" : tenths > 9 ? "more than 9 in 10" : tenths + " in 10";
    }

    /** "1 place", "8 places". */
    public static String places(int count) {
        return count == 1 ? "1 place" : count + " places";
    }

    /** "a, b and c"; empty for none. */
    public static String and(List<String> things) {
        int last = things.size() - 1;
        return last < 1 ? String.join("", things)
                : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }

    /** "4", "4 and 7", "1, 2 and 5"; empty for none. */
    static String numbers(List<Integer> numbers) {
        return and(numbers.stream().map(String::valueOf).toList());
    }

    /** "1 to 4, 7 and 9": runs of three and more put together. */
    static String ranges(List<Integer> numbers) {
        List<Integer> sorted = numbers.stream().sorted().distinct().toList();
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < sorted.size(); ) {
            int end = i;
            while (end + 1 < sorted.size() && sorted.get(end + 1) == sorted.get(end) + 1) {
                end++;
            }
            int last = end - i >= 2 ? end : i;
            runs.add(last == i ? sorted.get(i).toString() : sorted.get(i) + " to " + sorted.get(end));
            i = last + 1;
        }
        return and(runs);
    }

    /** "seat 4", "seats 1 to 6 and 8". */
    public static String seatRanges(List<Integer> seats) {
        return (seats.size() == 1 ? "seat " : "seats ") + ranges(seats);
    }

    /** "seat 4", "seats 4 and 7", and beyond {@code most} only how many: "11 seats". */
    public static String seats(List<Integer> seats, int most) {
        if (seats.size() > most) {
            return seats.size() + " seats";
        }
        return (seats.size() == 1 ? "seat " : "seats ") + numbers(seats);
    }

    /** The text with a capital first letter, whatever the script. */
    public static String sentence(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(java.util.Locale.ROOT) + text.substring(first);
    }
}
