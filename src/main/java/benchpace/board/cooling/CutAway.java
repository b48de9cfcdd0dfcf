package benchpace.board.cooling;

import benchpace.cure.solver.CandleSection;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import java.util.List;

/**
 * A candle cut open, computed for this minute; not an animation.
 *
 * @param seats   whose candle it is; several if theirs are alike, and then it is that of the last one poured
 * @param candle  what it is, in words
 * @param section where the wax is how solid
 */
public record CutAway(List<Integer> seats, String candle, Vessel vessel, TableTop tableTop, CandleSection section) {
    public CutAway {
        seats = List.copyOf(seats);
    }
}
