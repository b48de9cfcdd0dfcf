package benchpace.web.screen;

import benchpace.board.CandleClock;
import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import benchpace.board.SeatView;
import java.util.List;

/**
 * Each poured seat's own countdown on the wall, by number only.
 *
 * @param size {@code few}, {@code many} or {@code crowd}, for the style sheet
 */
public record WallSeats(String heading, String size, List<Candle> candles) {

    /** @param ready a hand test says so */
    public record Candle(int seat, boolean ready, String clock, Counter count) { }

    static WallSeats of(ClassView view, Times times) {
        boolean allSet = view.seats().stream().flatMap(s -> s.candle().stream()).allMatch(c -> c.judgedSetAt().isPresent());
        boolean shown = WallMain.waits(view) || view.stage() == Stage.FINISHING && !allSet;
        List<Candle> candles = !shown ? List.of() : view.seats().stream()
                .filter(s -> s.mark() != SeatView.Mark.SHARING && s.mark() != SeatView.Mark.LEFT)
                .flatMap(s -> s.candle().map(c -> candle(s.seat(), c, times)).stream())
                .toList();
        String size = candles.size() <= 8 ? "few" : candles.size() <= 16 ? "some" : candles.size() <= 24 ? "many" : "crowd";
        return new WallSeats("Your candle, by seat number, is ready about", size, candles);
    }

    private static Candle candle(int seat, CandleClock clock, Times times) {
        return new Candle(seat, clock.judgedSetAt().isPresent(), times.roughly(clock.ready().likely()),
                Counter.ready(clock.ready(), "bare", "any minute", times));
    }
}
