/**
 * The page everybody comes to first. Start at {@link benchpace.web.screen.start.StartView}.
 */
package benchpace.web.screen.start;
