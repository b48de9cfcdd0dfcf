/**
 * The page of the wait: calls, cards and strips. Start at {@link benchpace.web.screen.wait.WaitPage}.
 */
package benchpace.web.screen.wait;
