package benchpace.board.view;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.pacing.HomeTime;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Makes the part of a view that speaks of all candles together. It covers what is said of each. */
final class CureViews {
    private final Progress progress;
    private final List<Seat> makers;
    private final Map<SeatNumber, CandleClock> clocks;
    private final HomeTime home;
    private final Instant now;

    CureViews(LiveClass live, Map<SeatNumber, CandleClock> clocks, HomeTime home, Instant now) {
        this.progress = live.progress();
        this.makers = live.seats().stream().filter(Seat::makesCandle).toList();
        this.clocks = clocks;
        this.home = home;
        this.now = now;
    }

    ClassView.CureView cure() {
        List<Instant> pours = makers.stream().flatMap(s -> progress.pouredAt(s).stream()).toList();
        int poured = pours.size();
        List<CandleClock> waiting = seats(c -> !c.settled()).stream().map(s -> clocks.get(s.number())).toList();
        boolean all = poured == makers.size();
        boolean someSet = waiting.stream().anyMatch(c -> !c.tryIt(now));
        Optional<SaidRange> range = SaidRange.covering(waiting.stream().map(CandleClock::said).toList())
                .map(r -> all && someSet ? r.notBefore(home.p90()) : r);
        Optional<Instant> likely = waiting.stream().map(c -> c.ready().likely()).sorted()
                .skip(waiting.size() / 2).findFirst();
        Optional<Instant> first = pours.stream().min(Instant::compareTo);
        boolean alike = waiting.stream().map(CandleClock::said).distinct().count() == 1
                && range.equals(Optional.of(waiting.get(0).said()));
        return new ClassView.CureView(poured, makers.size(), range, alike, likely, first,
                setting(range, waiting.size()), numbers(seats(c -> !c.settled() && c.mayBeReady(now))));
    }

    private List<Seat> seats(Predicate<CandleClock> which) {
        return makers.stream().filter(s -> clocks.containsKey(s.number()) && which.test(clocks.get(s.number())))
                .toList();
    }

    /**
     * Whoever goes on now should know of these. Where every candle waited for is among them, what is said of all of
     * them is what is said of all.
     */
    private Optional<ClassView.SettingView> setting(Optional<SaidRange> all, int waiting) {
        List<Seat> setting = seats(c -> c.stillSets(now));
        List<SaidRange> said = setting.stream().map(s -> clocks.get(s.number()).said()).toList();
        return (setting.size() == waiting ? all : SaidRange.covering(said)).filter(range -> !setting.isEmpty())
                .map(range -> new ClassView.SettingView(numbers(setting), range,
                        said.stream().allMatch(range::equals)));
    }

    private static List<Integer> numbers(List<Seat> seats) {
        return seats.stream().map(s -> s.number().value()).toList();
    }
}
