/**
 * The cure page: curves, columns and its form. Start at {@link benchpace.web.screen.cure.CurePage}.
 */
package benchpace.web.screen.cure;
