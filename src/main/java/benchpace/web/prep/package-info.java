/**
 * The day before, over the network: the prep pages, their live stream and what is ticked off of their lists. Start at
 * {@link benchpace.web.prep.PrepPages}.
 */
package benchpace.web.prep;
