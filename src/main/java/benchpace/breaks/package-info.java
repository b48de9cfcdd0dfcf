/**
 * Floor 2: the wait plan. Fits activities and class breaks into the time between each seat's pour and its candle, so
 * that every place is used by one seat at a time, nobody starts what would outlast their candle, and minutes with
 * nothing to do are few. Pure: no clock, no files, no randomness; the same problem gives the same plan.
 *
 * <p>Start at {@link benchpace.breaks.WaitPlanner}. A {@link benchpace.breaks.WaitProblem} goes in, a
 * {@link benchpace.breaks.WaitPlan} comes out; the plan is handed back with the next problem, so that what was
 * announced stays and what was planned counts as done when nobody taps. Inside, {@code Timeline} turns instants into
 * whole minutes, {@code StripSearch} finds one seat's best strip beside the others', {@code StripSharing} shares the
 * places among the seats and {@code PlanSearch} chooses when class breaks begin. Not here: words on a screen, events
 * of the class, how long candles take.
 */
package benchpace.breaks;
