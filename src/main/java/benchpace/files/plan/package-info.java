/**
 * Plans of classes and tables of waxes. Start at {@link benchpace.files.plan.PlanFile}.
 */
package benchpace.files.plan;
