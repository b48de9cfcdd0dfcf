/**
 * Past classes, side by side: which they are, what each came to, and what they show together. Start at
 * {@link benchpace.web.screen.history.HistoryPage}.
 */
package benchpace.web.screen.history;
