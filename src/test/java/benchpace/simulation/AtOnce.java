package benchpace.simulation;

import benchpace.board.view.ClassView;
import benchpace.board.view.Computed;
import benchpace.board.view.SeatView;
import benchpace.web.screen.EveryScreen;
import benchpace.words.MissingWords;
import java.util.List;

/**
 * The first breath of a tap holds to what the whole view says a moment later: all that the record alone tells is there
 * already, every screen tells one story, and nobody is called who was not called before.
 */
final class AtOnce {
    private AtOnce() { }

    /**
     * @param view   what is shown at once
     * @param before what was computed before
     * @param whole  what is shown once all is computed
     */
    static void check(ClassView view, Computed before, ClassView whole) {
        Broken.unless(view.missing().models().isEmpty(), "what is shown at once can be made",
                () -> MissingWords.fact(view.missing()));
        Agreement.check(view, EveryScreen.of(view), EveryScreen.candles(view));
        Broken.unless(told(view).equals(told(whole)), "what was tapped is told at once",
                () -> Apart.of(told(view), told(whole)));
        for (SeatView seat : view.seats()) {
            SeatView then = whole.seat(seat.seat());
            Broken.unless(told(seat).equals(told(then)), "what was tapped for a seat is told at once",
                    () -> seat + " and then " + then);
            Broken.unless(seat.flag().isEmpty() || before.pace().flags().containsValue(seat.flag().get()),
                    "nobody is called who was not judged", seat::toString);
            Broken.unless(then.candle().isPresent() == then.pouredAt().isPresent(), "every poured candle has its time",
                    then::toString);
        }
    }

    private static List<Object> told(ClassView view) {
        return List.of(view.seq(), view.stage(), view.steps(), view.undo(), view.notes(), view.turns(), view.chart(),
                view.guestsMayTell(), view.cure().poured(), view.cure().of(), view.cure().firstPour(),
                view.next().map(n -> List.of(n.step(), n.leavesBehind())));
    }

    private static List<Object> told(SeatView seat) {
        return List.of(seat.name(), seat.finished(), seat.gaps(), seat.since(), seat.countFrom(), seat.helper(),
                seat.pouredAt(), seat.sharesWith(), seat.sharedBy(), seat.hint(), seat.taps(), seat.notes(),
                seat.before());
    }
}
