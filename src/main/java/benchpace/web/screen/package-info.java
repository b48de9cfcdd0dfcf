/**
 * Everything a person looks at: the pages and their live parts, rendered from {@code board}'s one view of a class.
 * Small records prepare the words; the templates in {@code src/main/jte} only loop and choose. No HTTP, no clock, no
 * rule of a class lives here. Start at {@link benchpace.web.screen.Screens}.
 */
package benchpace.web.screen;
