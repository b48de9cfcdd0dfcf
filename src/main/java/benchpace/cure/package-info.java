/**
 * The cooling of a poured candle, computed: heat transfer with latent heat, its milestones, and how a room's own
 * readings correct it.
 *
 * <p>Start at {@link benchpace.cure.CoolingCase} (what is asked) and {@link benchpace.cure.CureSolver} (how it is
 * answered). {@link benchpace.cure.TableCase} makes a case from a vessel, a wax and a table;
 * {@link benchpace.cure.CureOutlook} gives a seat's range and {@link benchpace.cure.RoomFit} what a room has taught.
 *
 * <p>Pure: no clock, files, logging, threads or randomness. Times are minutes from the pour, temperatures Celsius.
 */
package benchpace.cure;
