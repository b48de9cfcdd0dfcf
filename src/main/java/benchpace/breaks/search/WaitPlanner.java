package benchpace.breaks.search;

import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;

/**
 * Fits the activities of the wait into the time between each seat's pour and its candle.
 *
 * <p><b>Rules, always kept.</b> Never more seats at an activity than it has places. A seat does one thing at a time,
 * from its hands being free on. What is done once is done once; refreshments and browsing at most twice and not
 * twice in a row. A clear table is made (clean-up) before what needs one. A class break holds everybody who is still
 * waiting, at once, and happens once. Wrapping is expected after the likely ready moment and what the finish takes, and
 * nobody is called to it whose candle is not judged set by hand; seats that share a candle take one place at it.
 *
 * <p><b>Nobody is sent into what outlasts their candle.</b> An activity that cannot be interrupted must fit with its
 * longest length (nine seats in ten) before the <em>earliest</em> likely ready moment (one candle in ten is ready
 * before). Both ends are taken at their pessimistic tenth because both are uncertain: with the median ready moment
 * instead, up to one guest in two would find their candle ready while they are held up; with both at the tenth, the
 * odds of that are below one in ten whatever the two spreads are, for independent, roughly normal spreads (the spread
 * of a difference is the root of the sum of the squares, never more than the sum). What may be left at any time may
 * go on until the seat's turn at the wrapping.
 *
 * <p><b>Aims, in order.</b> Place every class break; keep what was announced; a label and a clean-up for everybody;
 * few minutes with nothing to do in total; then for the seat that has most; then few changes to the previous plan.
 *
 * <p>Needs no taps: what the previous plan sent a seat to is taken to have happened. Taps, where made, overrule it.
 */
public final class WaitPlanner {
    private WaitPlanner() { }

    /** The wait plan for a problem. The same problem always gives the same plan. */
    public static WaitPlan plan(WaitProblem problem) {
        Timeline line = new Timeline(problem);
        return new PlanAssembly(line, new PlanSearch(line).best()).plan();
    }
}
