/**
 * The page of past classes. Start at {@link benchpace.web.history.HistoryPages}.
 */
package benchpace.web.history;
