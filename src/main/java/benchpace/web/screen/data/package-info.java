/**
 * The page of the data that is the organiser's own. Start at {@link benchpace.web.screen.data.DataPage}.
 */
package benchpace.web.screen.data;
