/** Where it is said whose room it is. Start at {@link benchpace.web.screen.studio.StudioPage}. */
package benchpace.web.screen.studio;
