/**
 * Floor 0: what a plan says of the day before: melters, appliances, the venue's circuits, supplies and what the makers
 * allow. Values only, as written; nothing is worked out here (that is {@code benchpace.prep}), and what the plan does
 * not say is absent, never guessed. Start at {@link benchpace.plan.kit.Kit}.
 */
package benchpace.plan.kit;
