/**
 * Floor 0: masses, volumes, temperatures and watts as people write them, with exact factors. Everything else reckons in
 * grams, millilitres, degrees Celsius and watts; ounces, fluid ounces and degrees Fahrenheit are read and written here
 * and nowhere else. An ounce of weight is never a fluid ounce, the fluid ounces of two countries are told apart, and a
 * temperature is never taken for a difference of two. Start at {@link benchpace.units.Typed} and
 * {@link benchpace.units.UnitChoice}.
 */
package benchpace.units;
