package benchpace.words.report;

import benchpace.report.SeatIdle;
import benchpace.words.FiguresWords;
import benchpace.words.Phrases;
import java.util.Comparator;
import java.util.List;

/** What seats had to do in their wait. */
public final class WaitedWords {
    private WaitedWords() { }

    /** "28 idle minutes in the wait of 8 seats. The most for one: 9 min, at seat 4."; empty if nobody waited. */
    public static String all(List<SeatIdle> idle) {
        int sum = idle.stream().mapToInt(SeatIdle::idleMinutes).sum();
        String all = FiguresWords.idle(idle.size(), sum);
        return sum == 0 || idle.size() == 1 ? all : all + " " + most(idle);
    }

    private static String most(List<SeatIdle> idle) {
        SeatIdle most = idle.stream().max(Comparator.comparingInt(SeatIdle::idleMinutes)
                .thenComparing(SeatIdle::seat, Comparator.reverseOrder())).orElseThrow();
        return "The most for one: " + Phrases.count(most.idleMinutes()) + ", at seat " + most.seat() + ".";
    }
}
