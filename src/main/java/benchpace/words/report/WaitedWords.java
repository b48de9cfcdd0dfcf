package benchpace.words.report;

import benchpace.report.SeatIdle;
import benchpace.words.Phrases;
import java.util.Comparator;
import java.util.List;

/** What seats had to do in their wait. */
public final class WaitedWords {
    private WaitedWords() { }

    /** "28 min with nothing to do over all seats, at most 9 min for one (seat 4)."; empty if nobody waited. */
    public static String all(List<SeatIdle> idle) {
        if (idle.isEmpty()) {
            return "";
        }
        int sum = idle.stream().mapToInt(SeatIdle::idleMinutes).sum();
        SeatIdle most = idle.stream().max(Comparator.comparingInt(SeatIdle::idleMinutes)
                .thenComparing(SeatIdle::seat, Comparator.reverseOrder())).orElseThrow();
        return sum == 0 ? "Everybody had something to do all the time." : Phrases.count(sum)
                + " with nothing to do over all seats, at most " + Phrases.count(most.idleMinutes())
                + " for one, seat " + most.seat() + ".";
    }
}
