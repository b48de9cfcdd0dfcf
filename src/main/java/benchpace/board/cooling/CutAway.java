package benchpace.board.cooling;

import benchpace.cure.solver.CandleSection;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;

/**
 * A candle cut open, computed for this minute of the clock; not an animation.
 *
 * @param seat    whose candle it is
 * @param candle  what it is, in words
 * @param section where the wax is how solid
 */
public record CutAway(int seat, String candle, Vessel vessel, TableTop tableTop, CandleSection section) { }
