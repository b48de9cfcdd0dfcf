/**
 * Floor 0: what somebody is asked who wants a new plan, and what is remarked of the plan that was made. Values only; it
 * is made by {@code benchpace.files.pattern}, where its words stand.
 */
package benchpace.plan.pattern;
