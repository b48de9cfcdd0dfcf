/**
 * What past classes taught, of rooms and of steps. Start at {@link benchpace.web.screen.learned.LearnedPage}.
 */
package benchpace.web.screen.learned;
