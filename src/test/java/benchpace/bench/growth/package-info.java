/**
 * How a cost grows with what there is more of: measured points, the exponent they have, and a drawing of them. Start at
 * {@link benchpace.bench.growth.Curve}.
 */
package benchpace.bench.growth;
