/**
 * A new plan from a short dialogue: seats, one candle and four questions are enough for a plan that can be taught. Its
 * words stand in pattern plans among the resources; what is done here is to fit one of them to the answers. Start at
 * {@link benchpace.files.pattern.NewPlan}.
 */
package benchpace.files.pattern;
