/**
 * The page of the look: what every screen is made of, in every state, for devices that are paired. Start at {@link
 * benchpace.web.style.StylePages}.
 */
package benchpace.web.style;
