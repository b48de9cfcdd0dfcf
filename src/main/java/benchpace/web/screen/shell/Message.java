package benchpace.web.screen.shell;

/** A page that only says something. @param link where to go from here; @param linkWords how that is called */
public record Message(String heading, String text, String link, String linkWords) { }
