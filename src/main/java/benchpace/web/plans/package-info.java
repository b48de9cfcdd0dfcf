/**
 * The book of plans over HTTP: each plan with its version as its ETag, and the page that lists them. Start at {@link
 * benchpace.web.plans.PlansApi}.
 */
package benchpace.web.plans;
