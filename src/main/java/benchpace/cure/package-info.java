/**
 * The cooling of a poured candle: what a case is, made from a vessel, a wax and a table. Its rooms: {@code solver}
 * answers a case by heat transfer with latent heat, {@code room} corrects the answer by what was measured. Pure: no
 * clock, files, logging, threads or randomness. Times are minutes from the pour, temperatures Celsius. Start at {@link
 * benchpace.cure.CoolingCase} and {@link benchpace.cure.TableCase}.
 */
package benchpace.cure;
