/**
 * The list of plans, and what a plan was in an earlier version. Start at {@link benchpace.web.screen.plans.PlansPage}.
 */
package benchpace.web.screen.plans;
