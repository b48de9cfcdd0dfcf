/**
 * What all screens share: the frame of a page, its menu, marks and times. Start at {@link
 * benchpace.web.screen.shell.Shell}.
 */
package benchpace.web.screen.shell;
