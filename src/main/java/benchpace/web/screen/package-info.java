/**
 * Everything a person looks at: the pages and their live parts, rendered from {@code board}'s one view of a class. One
 * room a screen, named as its templates in {@code src/main/jte}, which only loop and choose. No HTTP, no clock, no rule
 * of a class lives here. Start at {@link benchpace.web.screen.Screens}.
 */
package benchpace.web.screen;
