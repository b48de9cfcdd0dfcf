/**
 * The pages on which a class is set up and corrected, and its place cards. Start at
 * {@link benchpace.web.screen.setup.SetupPage}.
 */
package benchpace.web.screen.setup;
