/**
 * The list of plans, what a plan was in an earlier version, and the page that edits one ({@code Edit*}), whose fields
 * {@link benchpace.web.screen.plans.EditFields} lists. Start at {@link benchpace.web.screen.plans.PlansPage}.
 */
package benchpace.web.screen.plans;
