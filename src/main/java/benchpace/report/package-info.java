/**
 * Floor 2: what happened in a class and why. Reads the record of a class as {@code pace} keeps it and says what the
 * last candle waited for, what each step took, how flags were answered and whether they were right, what seats had to
 * do in their wait, and how what was said of candles turned out. Pure: no clock, no files, no words for a screen;
 * minutes count from the class's start.
 *
 * <p>Start at {@link benchpace.report.WhatHeld}, which walks the {@link benchpace.report.ActivityNetwork} that
 * {@code ClassNetwork} makes of a class. Not here: judging a class while it runs ({@code pace}), rendering.
 */
package benchpace.report;
