/**
 * What an address that stays shows while no class is on. See {@link benchpace.web.screen.between.BetweenPage}.
 */
package benchpace.web.screen.between;
