/**
 * The cure page and its readings. Start at {@link benchpace.web.cure.CurePages}.
 */
package benchpace.web.cure;
