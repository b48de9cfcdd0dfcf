package benchpace.board.view;

import benchpace.board.cooling.Cooling;
import benchpace.board.pacing.CarriedPace;
import benchpace.board.pacing.Pace;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitViews;
import benchpace.live.LiveClass;
import java.time.Instant;
import java.util.Optional;

/**
 * What of a view has to be computed, and so comes with the second breath of a tap: when candles are ready, who is
 * behind and what it costs, when everyone goes home, how the wait goes. All else of a view is told by the class's
 * record alone, and comes with the first, at once.
 *
 * @param of          the class and the instant that it was computed for
 * @param waitChanges when the plan of the wait changes by itself
 */
public record Computed(Moment of, Cooling cooling, Pace pace, WaitView waiting, Optional<Instant> waitChanges) {

    /** A class at an instant. */
    public record Moment(LiveClass live, Instant now) { }

    /** Whether it may stand beside what was told later: not where a clock was set right since, which moves times. */
    public boolean mayCarry(LiveClass later) {
        return later.clocks() == of.live().clocks();
    }

    /**
     * What of it still holds at a later moment of the class, so that nothing said with it contradicts what was tapped
     * since. Nothing is computed, and nothing is told that was not before.
     */
    Computed at(Moment later) {
        if (later.live() == of.live()) {
            return this;
        }
        Cooling cooled = cooling.after(later.live());
        return new Computed(later, cooled,
                CarriedPace.of(pace, of.live(), later.live(), cooled.clocks(), later.now()),
                WaitViews.carried(waiting, later.live(), later.now()), waitChanges);
    }
}
