/**
 * Floor 2: the wait plan, what goes in and what comes out. A {@link benchpace.breaks.WaitProblem} goes in, a {@link
 * benchpace.breaks.WaitPlan} comes out; it is handed back with the next problem, so that what was announced stays and
 * what was planned counts as done when nobody taps. Pure: no clock, no files, no randomness; the same problem gives the
 * same plan. {@code search} makes the plan. Not here: words on a screen, events of the class, how long candles take.
 */
package benchpace.breaks;
