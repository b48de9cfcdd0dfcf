/**
 * Floor 2: the evening before it happens. A {@link benchpace.prep.evening.Setting} (plan, seats, what each makes, what
 * was promised, what is believed) is simulated a few thousand times with the pace and the cure of the live board
 * ({@link benchpace.prep.evening.Evenings}), which gives a {@link benchpace.prep.evening.Timetable}. Pure: the same
 * setting and seed give the same evenings. Not here: wax, melter, supplies, words. Start at {@code Evenings}.
 */
package benchpace.prep.evening;
