/**
 * What past classes taught in one place, each of it accepted or taken back there. Start at {@link
 * benchpace.web.learned.LearnedPages}.
 */
package benchpace.web.learned;
