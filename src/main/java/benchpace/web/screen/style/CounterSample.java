package benchpace.web.screen.style;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.web.screen.shell.Counter;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What ticks, at an instant.
 *
 * @param when where that lies
 * @param now  RFC 3339
 * @param said the range or the time in words, as it stands beside it
 */
public record CounterSample(String when, String now, String said, Counter counter) {

    /** Of a candle's range before, inside and past it, and of a time in step. */
    static List<CounterSample> all(List<Situation> situations) {
        List<CounterSample> all = new ArrayList<>();
        situations.stream().flatMap(s -> s.view().seats().stream()
                        .flatMap(seat -> seat.candle().filter(c -> !c.settled()).stream())
                        .map(candle -> all(candle, new Times(s.view().zone()))))
                .findFirst().ifPresent(all::addAll);
        return all;
    }

    private static List<CounterSample> all(CandleClock candle, Times times) {
        SaidRange range = candle.said();
        Instant before = range.from().minus(Duration.ofMinutes(12));
        return List.of(
                at(range, before, "before its range", times),
                at(range, range.from().plusSeconds(60), "inside it", times),
                at(range, range.until().plusSeconds(60), "past it", times),
                new CounterSample("a time in step", before.toString(), "",
                        Counter.since(before.minus(Duration.ofMinutes(7)), times)));
    }

    private static CounterSample at(SaidRange range, Instant now, String when, Times times) {
        return new CounterSample(when, now.toString(), times.said(range), Counter.tried(range));
    }
}
