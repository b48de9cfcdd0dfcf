/**
 * Whose room it is, over HTTP: the page on which an instructor says it, the interface behind it, and the sheet that
 * gives every page the studio's colour. Start at {@link benchpace.web.studio.StudioApi}.
 */
package benchpace.web.studio;
