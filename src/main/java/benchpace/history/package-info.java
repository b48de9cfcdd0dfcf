/**
 * Floor 2: many classes looked back on together. What one class came to in figures, which classes somebody wants to
 * see, and what may be said of how such figures go from class to class. Pure: no clock, no files, no words for a
 * screen.
 *
 * <p>Start at {@link benchpace.history.ClassFigures}, then {@link benchpace.history.Trend}. Not here: looking back on
 * one class ({@code report}), keeping figures ({@code store}), when they are made ({@code board}).
 */
package benchpace.history;
