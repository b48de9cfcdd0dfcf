/**
 * A helper's phone: who wants help, who is not done. Start at {@link benchpace.web.screen.helper.HelperPage}.
 */
package benchpace.web.screen.helper;
