package benchpace.web.screen.studio;

import benchpace.web.screen.shell.Shell;

/** The page on which it is said whose room it is, and seen how that looks. */
public record StudioPage(Shell shell, StudioFields fields) { }
